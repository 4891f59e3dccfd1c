package rungwise.knowledge.deposit;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.common.Basis;

/**
 * A sign: something noticed about the spot, and what it means.
 *
 * @param group    id of the group of signs that tell much the same thing
 * @param seenBy   id of the check by which it is seen
 * @param pointsTo contaminants that it speaks for
 * @param against  contaminants that it speaks against
 * @param fits     contaminants on which it is seen as well, so that it speaks neither for nor against them
 * @param strength id of how much it tells
 * @param otherwise id of the strength with which it speaks against whatever another sign of its group points to; for
 *                 signs such as colours, of which everything has one
 * @param implies  signs that hold wherever this one does
 * @param treatAs  surface id whose delicacy must be assumed from now on
 * @param stops    why solvent work stops until somebody has looked, where the sign is decisive
 */
public record Observation(String id, String says, String group, String seenBy, List<String> pointsTo,
                          List<String> against, List<String> fits, String strength, Optional<String> otherwise, List<String> implies,
                          String nextCheck,
                          Optional<String> treatAs, Optional<String> stops, Basis basis, List<String> sources) {
    public Observation {
        pointsTo = pointsTo == null ? List.of() : List.copyOf(pointsTo);
        against = against == null ? List.of() : List.copyOf(against);
        fits = fits == null ? List.of() : List.copyOf(fits);
        otherwise = otherwise == null ? Optional.empty() : otherwise;
        implies = implies == null ? List.of() : List.copyOf(implies);
        nextCheck = nextCheck == null ? "" : nextCheck;
        treatAs = treatAs == null ? Optional.empty() : treatAs;
        stops = stops == null ? Optional.empty() : stops;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** Whether it says anything about what the deposit is. */
    public boolean speaks() {
        return !pointsTo.isEmpty() || !against.isEmpty() || otherwise.isPresent();
    }
}
