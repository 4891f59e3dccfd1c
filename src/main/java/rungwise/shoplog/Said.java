package rungwise.shoplog;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * What became known of a spot after it was kept.
 *
 * @param at           since when it holds
 * @param attempt      id of the attempt with which it was told
 * @param told         fields of a question, in ids
 * @param dwellMinutes how long the attempt was left on the spot
 * @param signs        stop signs seen in the attempt
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Said(Instant at, Optional<String> attempt, JsonNode told, OptionalDouble dwellMinutes, List<String> signs) {
    public Said {
        attempt = attempt == null ? Optional.empty() : attempt;
        told = told == null ? JsonNodeFactory.instance.objectNode() : told;
        dwellMinutes = dwellMinutes == null ? OptionalDouble.empty() : dwellMinutes;
        signs = signs == null ? List.of() : List.copyOf(signs);
    }

    /** Whether it adds nothing to the attempt itself. */
    boolean isNothing() {
        return told.isEmpty() && dwellMinutes.isEmpty() && signs.isEmpty();
    }
}
