package rungwise.shoplog;

import java.time.Instant;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * A spot with all that was kept of it.
 *
 * @param id       as people say it
 * @param at       when the question was kept
 * @param question as it was asked then, in ids
 * @param said     what became known since, in the order in which it was told
 * @param attempts made on it, oldest first
 */
public record KeptSpot(String id, Instant at, JsonNode question, List<Said> said, List<Attempt> attempts) {
    public KeptSpot {
        said = List.copyOf(said);
        attempts = List.copyOf(attempts);
    }
}
