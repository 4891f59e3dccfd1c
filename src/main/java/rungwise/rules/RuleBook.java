package rungwise.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.drools.core.common.InternalAgenda;
import org.kie.api.KieBase;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.Match;

/** The compiled rules. One phase of one question is one short session; a rule book may be used from many threads. */
public final class RuleBook {
    private final KieBase base;
    private final Map<String, RuleInfo> infoByName;
    private final Set<String> fired = ConcurrentHashMap.newKeySet();

    RuleBook(KieBase base) {
        this(base, RuleMetadata.read(base));
    }

    private RuleBook(KieBase base, Map<String, RuleInfo> infoByName) {
        this.base = base;
        this.infoByName = infoByName;
    }

    /** The same rules, none of which has fired yet: shows what one question alone fires. */
    public RuleBook unfired() {
        return new RuleBook(base, infoByName);
    }

    /** What every rule says of itself, by rule id. */
    public Map<String, RuleInfo> rules() {
        Map<String, RuleInfo> byId = new TreeMap<>();
        infoByName.values().forEach(i -> byId.put(i.id(), i));
        return byId;
    }

    /** Ids of the rules that fired since this book was opened: the measure of rule coverage. */
    public Set<String> fired() {
        return Set.copyOf(fired);
    }

    /** Lets every rule of a phase look at the facts, and returns what they concluded, each with its because. */
    public Conclusions run(Phase phase, Collection<?> facts) {
        KieSession session = base.newKieSession();
        try {
            Witness witness = new Witness();
            session.addEventListener((org.kie.api.event.rule.AgendaEventListener) witness.agenda);
            session.addEventListener((org.kie.api.event.rule.RuleRuntimeEventListener) witness.memory);
            facts.forEach(session::insert);
            witness.watching = true;
            ((InternalAgenda) session.getAgenda()).activateRuleFlowGroup(phase.group());
            session.fireAllRules();
            return new Conclusions(witness.inOrder());
        } finally {
            session.dispose();
        }
    }

    private record Keyed(String key, Concluded<? extends Conclusion> concluded) {
    }

    /** Ties each inserted conclusion to the match that inserted it, so that no rule has to build its own reason. */
    private final class Witness {
        private final List<Keyed> concluded = new ArrayList<>();
        private Match current;
        private boolean watching;

        private final DefaultAgendaEventListener agenda = new DefaultAgendaEventListener() {
            @Override
            public void beforeMatchFired(BeforeMatchFiredEvent event) {
                current = event.getMatch();
            }

            @Override
            public void afterMatchFired(AfterMatchFiredEvent event) {
                fired.add(infoByName.get(current.getRule().getName()).id());
                current = null;
            }
        };

        private final DefaultRuleRuntimeEventListener memory = new DefaultRuleRuntimeEventListener() {
            @Override
            public void objectInserted(ObjectInsertedEvent event) {
                if (watching && current != null && event.getObject() instanceof Conclusion conclusion) {
                    Concluded<Conclusion> one = new Concluded<>(conclusion, because(conclusion));
                    concluded.add(new Keyed(one.because().rule() + conclusion, one));
                }
            }
        };

        /** By rule and content, so that firing order never shows. */
        private List<Concluded<? extends Conclusion>> inOrder() {
            concluded.sort(Comparator.comparing(Keyed::key));
            List<Concluded<? extends Conclusion>> sorted = new ArrayList<>(concluded.size());
            concluded.forEach(k -> sorted.add(k.concluded()));
            return sorted;
        }

        private Because because(Conclusion conclusion) {
            RuleInfo info = infoByName.get(current.getRule().getName());
            return new Because(info.id(), info.says(), info.cause(), List.of(conclusion.figures()),
                    FactSources.with(info.sources(), current.getObjects()), info.basis());
        }
    }
}
