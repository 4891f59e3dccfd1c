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
 * @param undone   attempts that were taken back; what was told with them is not in {@code said}
 */
public record KeptSpot(String id, Instant at, JsonNode question, List<Said> said, List<Attempt> attempts, List<Undone> undone) {
    public KeptSpot {
        said = List.copyOf(said);
        attempts = List.copyOf(attempts);
        undone = List.copyOf(undone);
    }

    /** One of which nothing was taken back. */
    public KeptSpot(String id, Instant at, JsonNode question, List<Said> said, List<Attempt> attempts) {
        this(id, at, question, said, attempts, List.of());
    }

    /** Whether the last that was tried on it did not take it off, or left a mark. */
    public boolean isOpen() {
        return attempts.isEmpty() || attempts.get(attempts.size() - 1).outcome() != Outcome.CLEARED;
    }
}
