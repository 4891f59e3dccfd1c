package rungwise.knowledge.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.surface.Trait;

/**
 * A fact that a person at the vehicle may be asked for.
 *
 * @param asks    the question
 * @param gate    gate that waits for it, and says how to find out
 * @param kinds   kinds of surface that can have it; empty = all
 * @param without traits of a surface that cannot have it, though its kind can
 * @param early   whether it is asked before the others
 * @param unnamed whether it is a sign, asked only where nobody knows what the deposit is
 * @param touches whether it takes a hand or a gauge on the spot, so that it is left out while work is stopped
 * @param anyTime whether a reply of it is understood where something else was asked
 * @param takes   what may be said in place of a reply
 */
public record AskedFact(String id, String asks, Optional<String> gate, Set<SurfaceKind> kinds, Set<Trait> without,
                        boolean early, boolean unnamed, boolean touches, boolean anyTime, Optional<Takes> takes, List<Reply> replies) {
    public AskedFact {
        gate = gate == null ? Optional.empty() : gate;
        kinds = kinds == null ? Set.of() : Sorted.set(kinds);
        without = without == null ? Set.of() : Sorted.set(without);
        takes = takes == null ? Optional.empty() : takes;
        replies = List.copyOf(replies);
    }

    /** Whether this surface can have it. */
    public boolean isOn(Surface surface) {
        return meet(kinds, surface.kinds()) && surface.traits().stream().noneMatch(without::contains);
    }

    /** What may be replied on a surface that may be of these kinds. */
    public List<Reply> on(Set<SurfaceKind> here) {
        return replies.stream().filter(r -> meet(r.kinds(), here)).toList();
    }

    private static boolean meet(Set<SurfaceKind> kinds, Set<SurfaceKind> here) {
        return kinds.isEmpty() || kinds.stream().anyMatch(here::contains);
    }

    /** How words are read that are no reply. */
    public enum As {
        DAYS, MINUTES, NUMBER, SPAN, WORD, TRY
    }

    /**
     * What may be said in place of a reply.
     *
     * @param field of the question that it fills, as a JSON Pointer
     */
    public record Takes(String field, As as) {
    }

    /**
     * What may be replied.
     *
     * @param gives what it adds to the question
     */
    public record Reply(String id, String says, List<String> alsoCalled, Set<SurfaceKind> kinds, Map<String, Object> gives) {
        public Reply {
            alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
            kinds = kinds == null ? Set.of() : Sorted.set(kinds);
            gives = Sorted.map(gives);
        }
    }
}
