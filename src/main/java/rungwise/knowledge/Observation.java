package rungwise.knowledge;

import java.util.List;
import java.util.Optional;

/**
 * Something noticed about the spot and what it means.
 *
 * @param treatAs surface id whose delicacy must be assumed from now on
 * @param stops   why solvent work stops until somebody has looked, where the sign is decisive
 */
public record Observation(String id, String says, List<String> pointsTo, List<String> against, String strength,
                          String nextCheck, Optional<String> treatAs, Optional<String> stops, Basis basis,
                          List<String> sources) {
    public Observation {
        pointsTo = pointsTo == null ? List.of() : List.copyOf(pointsTo);
        against = against == null ? List.of() : List.copyOf(against);
        treatAs = treatAs == null ? Optional.empty() : treatAs;
        stops = stops == null ? Optional.empty() : stops;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
