package rungwise.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.drools.core.common.InternalAgenda;
import org.kie.api.KieBase;
import org.kie.api.event.rule.AfterMatchFiredEvent;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.Match;
import rungwise.rules.fact.Deposit;
import rungwise.rules.said.Because;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusion;
import rungwise.rules.said.Conclusions;
import rungwise.rules.said.Reason;
import rungwise.text.Texts;

/**
 * The compiled rules. One phase of one question is one short session; a rule book may be used from many threads. The
 * rules of a phase are opened when it first runs, as most questions need only some of the phases.
 */
public final class RuleBook {
    private static final Consumer<Conclusions> NOBODY = said -> { };

    private final Map<Phase, Supplier<Opened>> phases;
    private final Set<String> leftOut;
    private final Set<String> fired = ConcurrentHashMap.newKeySet();
    private final Map<String, Reason> reasons = new ConcurrentHashMap<>();
    private final Consumer<Conclusions> ear;

    /** Rules ready to run, and what each says of itself by its name. */
    private record Opened(KieBase base, Map<String, RuleInfo> infoByName) {
    }

    /** One base that holds the rules of every phase. */
    static RuleBook whole(KieBase base) {
        Opened opened = new Opened(base, RuleMetadata.read(base));
        return new RuleBook(each(phase -> () -> opened), Set.of(), NOBODY);
    }

    private RuleBook(Map<Phase, Supplier<Opened>> phases, Set<String> leftOut, Consumer<Conclusions> ear) {
        this.phases = phases;
        this.leftOut = leftOut;
        this.ear = ear;
    }

    private static Map<Phase, Supplier<Opened>> each(Function<Phase, Supplier<Opened>> opening) {
        Map<Phase, Supplier<Opened>> phases = new EnumMap<>(Phase.class);
        for (Phase phase : Phase.values()) {
            phases.put(phase, opening.apply(phase));
        }
        return phases;
    }

    /** A base for each phase, opened when it is needed. */
    static RuleBook byPhase(Function<Phase, KieBase> open) {
        return new RuleBook(each(phase -> new Once<>(() -> opened(phase, open.apply(phase)))), Set.of(), NOBODY);
    }

    private static Opened opened(Phase phase, KieBase base) {
        Map<String, RuleInfo> infoByName = RuleMetadata.read(base);
        infoByName.forEach((name, info) -> {
            if (!info.phase().equals(phase.group())) {
                throw new BadRules(List.of(Texts.said("rule.other-phase", "name", name, "phase", info.phase(), "group", phase.group())));
            }
        });
        return new Opened(base, infoByName);
    }

    /** The same rules, none of which has fired yet: shows what one question alone fires. */
    public RuleBook unfired() {
        return new RuleBook(phases, leftOut, ear);
    }

    /** The same rules but one: what then differs is what that rule is for. */
    public RuleBook without(String id) {
        return new RuleBook(phases, Set.of(id), ear);
    }

    /** The same rules, each run told to somebody who listens; where many threads ask, from each of them. */
    public RuleBook heardBy(Consumer<Conclusions> listener) {
        return new RuleBook(phases, leftOut, listener);
    }

    /** Begins to open what every question needs, beside whatever the caller does meanwhile. */
    public RuleBook openSoon() {
        Thread opening = new Thread(() -> List.of(Phase.DERIVE, Phase.TODAY, Phase.CLOSE).forEach(p -> run(p, List.of())),
                "rules");
        opening.setDaemon(true);
        // whoever needs the rules meets the same problem and reports it
        opening.setUncaughtExceptionHandler((thread, problem) -> { });
        opening.start();
        return this;
    }

    /** What every rule says of itself, by rule id. */
    public Map<String, RuleInfo> rules() {
        Map<String, RuleInfo> byId = new TreeMap<>();
        for (Supplier<Opened> phase : phases.values()) {
            phase.get().infoByName().values().forEach(info -> {
                RuleInfo other = byId.put(info.id(), info);
                if (other != null && !other.equals(info)) {
                    throw new BadRules(List.of(Texts.said("rule.one-id-twice", "id", info.id())));
                }
            });
        }
        return byId;
    }

    /** Ids of the rules that fired since this book was opened: the measure of rule coverage. */
    public Set<String> fired() {
        return Set.copyOf(fired);
    }

    /** Lets every rule of a phase look at the facts, and returns what they concluded, each with its because. */
    public Conclusions run(Phase phase, Collection<?> facts) {
        Opened opened = phases.get(phase).get();
        KieSession session = opened.base().newKieSession();
        try {
            Witness witness = new Witness(opened.infoByName());
            session.addEventListener((org.kie.api.event.rule.AgendaEventListener) witness.agenda);
            session.addEventListener((org.kie.api.event.rule.RuleRuntimeEventListener) witness.memory);
            facts.forEach(session::insert);
            witness.watching = true;
            ((InternalAgenda) session.getAgenda()).activateRuleFlowGroup(phase.group());
            if (leftOut.isEmpty()) {
                session.fireAllRules();
            } else {
                session.fireAllRules(match -> !leftOut.contains(opened.infoByName().get(match.getRule().getName()).id()));
            }
            Conclusions said = new Conclusions(witness.inOrder());
            ear.accept(said);
            return said;
        } finally {
            session.dispose();
        }
    }

    private record Keyed(String key, Concluded<? extends Conclusion> concluded) {
    }

    /** Ties each inserted conclusion to the match that inserted it, so that no rule has to build its own reason. */
    private final class Witness {
        private final Map<String, RuleInfo> infoByName;
        private final List<Keyed> concluded = new ArrayList<>();
        private Match current;
        private boolean watching;

        private Witness(Map<String, RuleInfo> infoByName) {
            this.infoByName = infoByName;
        }

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
                    Concluded<Conclusion> one = new Concluded<>(conclusion, because(conclusion), suspect());
                    concluded.add(new Keyed(one.because().id() + " " + conclusion.key(), one));
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

        /** The contaminant among what was matched. */
        private Optional<String> suspect() {
            for (Object matched : current.getObjects()) {
                if (matched instanceof Deposit deposit) {
                    return Optional.of(deposit.contaminant().id());
                }
            }
            return Optional.empty();
        }

        private Because because(Conclusion conclusion) {
            RuleInfo info = infoByName.get(current.getRule().getName());
            Reason reason = reasons.computeIfAbsent(info.id(), id -> info.reason());
            return new Because(reason, conclusion.figures(), FactSources.beside(reason.sources(), current.getObjects()));
        }
    }
}
