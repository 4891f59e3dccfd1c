package rungwise.knowledge.safety;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.method.Agent;

/**
 * How long gloves hold against a substance.
 *
 * @param solvents     kinds of agent component that count as this one
 * @param reactive     reactive groups of agents that count as this one
 * @param holds        substances and entries of exposure that are this one, where an agent is known to be made of them
 * @param smallAlcohol slips through gloves that it does not swell, so that no solubility sphere foretells it
 */
public record Permeation(String id, String name, Set<Solvent> solvents, Set<Reactive> reactive, Set<String> holds,
                         boolean smallAlcohol, List<GloveChart> charts) {
    public Permeation {
        solvents = Sorted.set(solvents);
        reactive = Sorted.set(reactive);
        holds = Sorted.set(holds);
        charts = List.copyOf(charts);
    }

    /**
     * Whether it counts for an agent: by kind, by reactive group, or because the agent is known to hold it.
     *
     * @param from the percent from which a component counts
     */
    public boolean counts(Agent agent, double from) {
        return solvents.stream().anyMatch(s -> agent.solvents().getOrDefault(s, 0.0) >= from)
                || !Collections.disjoint(reactive, agent.reactive())
                || holds.stream().anyMatch(h -> agent.composition().getOrDefault(h, 0.0) >= from
                || agent.dissolved().containsKey(h));
    }

    /** The shortest of all charts for a glove. */
    public OptionalDouble shortest(GloveMaterial glove) {
        return charts.stream().filter(c -> c.glove() == glove).mapToDouble(GloveChart::minutes).min();
    }
}
