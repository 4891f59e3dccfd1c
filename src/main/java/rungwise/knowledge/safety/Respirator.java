package rungwise.knowledge.safety;

import java.util.List;
import java.util.Set;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Sorted;

/**
 * Something worn to breathe through.
 *
 * @param against what it takes out of the air, or keeps out
 * @param factor  assigned protection factor: how many times the limit it may be worn in
 * @param ppe     item of protection that it is
 * @param says    what its wearer must know
 */
public record Respirator(String id, String name, Set<AirHazard> against, double factor, String ppe, String says,
                         Basis basis, List<String> sources) {
    public Respirator {
        against = Sorted.set(against);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** Takes a gas or vapour out of the air; not the hose that brings air of its own. */
    public boolean isCartridge() {
        return !against.contains(AirHazard.DUST);
    }
}
