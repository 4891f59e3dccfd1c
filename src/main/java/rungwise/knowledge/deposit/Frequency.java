package rungwise.knowledge.deposit;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * How often contaminants are met before anything is known of the spot.
 *
 * @param weight    against the other frequencies
 * @param otherwise whether it holds for all that no list names
 */
public record Frequency(String id, double weight, boolean otherwise, String meaning, List<String> contaminants,
                        Basis basis, List<String> sources) {
    public Frequency {
        contaminants = contaminants == null ? List.of() : List.copyOf(contaminants);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
