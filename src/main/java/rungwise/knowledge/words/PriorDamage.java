package rungwise.knowledge.words;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.common.Listed;
import rungwise.knowledge.common.Sorted;

/**
 * Damage that was there before the work.
 *
 * @param weak    what it makes of the surface
 * @param treatAs surface id whose delicacy paint with such damage has
 */
public record PriorDamage(String id, String name, String meaning, List<String> alsoCalled, Set<Weakness> weak,
                          Optional<String> treatAs) implements Listed {
    public PriorDamage {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
        weak = Sorted.set(weak);
        treatAs = treatAs == null ? Optional.empty() : treatAs;
    }

    public boolean is(Weakness one) {
        return weak.contains(one);
    }
}
