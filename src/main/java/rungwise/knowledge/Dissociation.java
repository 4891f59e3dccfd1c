package rungwise.knowledge;

import java.util.List;

/**
 * How it gives off protons in water.
 *
 * @param constants pKa from the first proton on, rising
 */
public record Dissociation(List<Double> constants, Basis basis, List<String> sources) {
    public Dissociation {
        constants = List.copyOf(constants);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
