package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Agent;
import rungwise.text.Texts;

/** What an agent is made of adds up, and agrees with what it says of its solvents. */
final class CompositionCheck implements Check {
    /** Trade products differ by this much, in percent by volume. */
    private static final double AGREES_WITHIN = 5;

    @Override
    public List<Fault> faults(Draft draft) {
        Map<String, Substance> substances = draft.items(Kind.SUBSTANCE, Substance.class);
        return draft.each(Kind.AGENT, Agent.class, (entry, agent) -> {
            List<Fault> faults = new ArrayList<>();
            double sum = agent.composition().values().stream().mapToDouble(Double::doubleValue).sum();
            if (sum > 100) {
                faults.add(entry.fault("composition", Texts.said("fault.over-the-whole", "sum", sum),
                        Texts.said("fault.over-the-whole.do")));
            }
            if (!agent.composition().isEmpty() && substances.keySet().containsAll(agent.composition().keySet())) {
                for (Solvent kind : Solvent.values()) {
                    double said = agent.solvents().getOrDefault(kind, 0.0);
                    double made = agent.composition().entrySet().stream()
                            .filter(e -> substances.get(e.getKey()).solvent().filter(s -> s == kind).isPresent())
                            .mapToDouble(Map.Entry::getValue).sum();
                    if (Math.abs(said - made) > AGREES_WITHIN) {
                        faults.add(entry.fault("composition", Texts.said("fault.kinds-differ", "made", made, "kind",
                                kind.name().toLowerCase(java.util.Locale.ROOT), "said", said), Texts.said("fault.kinds-differ.do")));
                    }
                }
            }
            return faults.stream();
        });
    }
}
