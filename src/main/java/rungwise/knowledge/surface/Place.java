package rungwise.knowledge.surface;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.common.Listed;
import rungwise.knowledge.common.Sorted;
import rungwise.science.PanelTemperature.Facing;

/**
 * Where on the vehicle a spot is.
 *
 * @param faces  which way it looks, for the sun on it
 * @param traits what the place adds to whatever surface is there
 * @param edge   whether it is an edge or crease, where paint is thin
 * @param sign   observation that it makes, where a deposit is to be named
 */
public record Place(String id, String name, String meaning, List<String> alsoCalled, Facing faces, Set<Trait> traits,
                    boolean edge, Optional<String> sign) implements Listed {
    public Place {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
        traits = Sorted.set(traits);
        sign = sign == null ? Optional.empty() : sign;
    }
}
