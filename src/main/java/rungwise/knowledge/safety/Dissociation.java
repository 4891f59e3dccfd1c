package rungwise.knowledge.safety;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * How it gives off protons in water.
 *
 * @param constants pKa from the first proton on, rising; one of −3 or less is a strong acid's
 * @param replaced  of its protons, how many sodium stands in for; 0 for the acid itself, a base or an amine
 */
public record Dissociation(List<Double> constants, int replaced, Basis basis, List<String> sources) {
    public Dissociation {
        constants = List.copyOf(constants);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
