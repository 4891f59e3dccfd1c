package rungwise.knowledge.safety;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * What a solvent puts into the air of a bay.
 *
 * @param densityGMl            of the liquid
 * @param lowerFlammablePercent lower flammable limit, percent by volume
 * @param evaporatingShare      of what is laid on, how much evaporates while the work lasts
 * @param mlPerSpot             what a cloth brings to one spot
 * @param mlPerSquareMetre      what wets a square metre
 * @param basis                 of density and limit; the amounts are common practice
 */
public record Vapour(double densityGMl, double lowerFlammablePercent, double evaporatingShare, double mlPerSpot,
                     double mlPerSquareMetre, Basis basis, List<String> sources) {
    public Vapour {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
