package rungwise.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.Trait;
import rungwise.rules.Phase;
import rungwise.rules.RuleBook;
import rungwise.rules.use.SolventContact;
import rungwise.rules.use.Use;
import rungwise.workup.PolymerContacts;

/**
 * What the rules say of every method on a surface, whatever the day. It depends on nothing else, so it is decided once
 * per surface and kept.
 */
public final class Standing {
    /** Surfaces and their combinations are few; past this many somebody is asking nonsense. */
    private static final int KEPT = 512;

    private final KnowledgeBase base;
    private final RuleBook book;
    private final Function<String, Optional<Map<String, Verdict>>> prepared;
    private final Map<String, Map<String, Verdict>> kept = new ConcurrentHashMap<>();

    public Standing(KnowledgeBase base, RuleBook book) {
        this(base, book, surface -> Optional.empty());
    }

    /**
     * With verdicts that were worked out before.
     *
     * @param prepared by surface id
     */
    public Standing(KnowledgeBase base, RuleBook book, Function<String, Optional<Map<String, Verdict>>> prepared) {
        this.base = base;
        this.book = book;
        this.prepared = prepared;
    }

    public Map<String, Verdict> on(Surface surface) {
        Map<String, Verdict> known = kept.get(surface.id());
        if (known != null) {
            return known;
        }
        if (kept.size() >= KEPT) {
            kept.clear();
        }
        Map<String, Verdict> judged = prepared.apply(surface.id()).orElseGet(() -> judge(surface));
        kept.put(surface.id(), judged);
        return judged;
    }

    public Verdict of(Surface surface, String method) {
        return on(surface).getOrDefault(method, Verdict.NOTHING);
    }

    private Map<String, Verdict> judge(Surface surface) {
        List<Object> facts = new ArrayList<>(List.of(base.decisions()));
        for (Method method : base.methods().values()) {
            Use use = use(method, surface);
            facts.add(use);
            Agent agent = use.agent();
            for (SolventColumn column : SolventColumn.values()) {
                double percent = agent.percentIn(column);
                // under stress even the little that elsewhere does not count cracks what forbids it
                boolean any = surface.is(Trait.STRESS_CRACKS) && surface.limit(column).verdict().forbids();
                if (percent > 0 && (any || percent >= base.decisions().value(DecisionId.SOLVENT_COUNTS))) {
                    facts.add(new SolventContact(use, column, percent, surface.limit(column)));
                }
            }
            facts.addAll(PolymerContacts.of(use, base));
        }
        return Verdict.byMethod(book.run(Phase.STANDING, facts).all());
    }

    public Use use(Method method, Surface surface) {
        return new Use(method, base.agentOf(method), base.toolOf(method), surface);
    }
}
