package rungwise.spot;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;

/**
 * A spot in a list.
 *
 * @param at          since when it is kept
 * @param contaminant id, or unknown
 * @param surface     ids; none where it is unknown
 * @param open        whether the last that was tried on it did not take it off
 * @param last        what was tried last
 */
public record SpotListed(String id, Instant at, String contaminant, Set<String> surface, boolean open, Optional<Last> last) {
    /** A method and how it ended. */
    public record Last(Instant at, String method, String outcome) {
    }
}
