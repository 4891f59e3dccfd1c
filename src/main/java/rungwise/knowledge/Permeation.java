package rungwise.knowledge;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How long gloves hold against a substance.
 *
 * @param solvents     kinds of agent component that count as this one
 * @param reactive     reactive groups of agents that count as this one
 * @param smallAlcohol slips through gloves that it does not swell, so that no solubility sphere foretells it
 */
public record Permeation(String id, String name, Set<Solvent> solvents, Set<Reactive> reactive, boolean smallAlcohol,
                         List<GloveChart> charts) {
    public Permeation {
        solvents = Sorted.set(solvents);
        reactive = Sorted.set(reactive);
        charts = List.copyOf(charts);
    }

    /** The shortest of all charts for a glove. */
    public OptionalDouble shortest(GloveMaterial glove) {
        return charts.stream().filter(c -> c.glove() == glove).mapToDouble(GloveChart::minutes).min();
    }
}
