package rungwise.knowledge.deposit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * @param word     whether it is one of the words of its kind, such as colours
 * @param ofTen    of ten who see a deposit aright, how many say this, where that is known better than by rule
 * @param implies  signs that hold wherever this one does
 * @param treatAs  surface id whose delicacy must be assumed from now on
 * @param stops    why solvent work stops until somebody has looked, where the sign is decisive
 */
public record Observation(String id, String says, String group, String seenBy, List<String> pointsTo,
                          List<String> against, List<String> fits, String strength, boolean word, List<OfTen> ofTen, List<String> implies,
                          String nextCheck,
                          Optional<String> treatAs, Optional<String> stops, Basis basis, List<String> sources) {
    public Observation {
        pointsTo = pointsTo == null ? List.of() : List.copyOf(pointsTo);
        against = against == null ? List.of() : List.copyOf(against);
        fits = fits == null ? List.of() : List.copyOf(fits);
        ofTen = ofTen == null ? List.of() : List.copyOf(ofTen);
        implies = implies == null ? List.of() : List.copyOf(implies);
        nextCheck = nextCheck == null ? "" : nextCheck;
        treatAs = treatAs == null ? Optional.empty() : treatAs;
        stops = stops == null ? Optional.empty() : stops;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** How many of ten say it of a deposit. */
    public record OfTen(String deposit, double say) {
    }

    /** Share of those who see this deposit aright that say this; empty where nobody stated it. */
    public OptionalDouble shareOn(String deposit) {
        return ofTen.stream().filter(o -> o.deposit().equals(deposit)).mapToDouble(o -> o.say() / 10).findFirst();
    }

    /** Whether it says anything about what the deposit is. */
    public boolean speaks() {
        return !pointsTo.isEmpty() || !against.isEmpty() || word;
    }
}
