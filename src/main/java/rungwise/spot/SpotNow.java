package rungwise.spot;

import java.time.Instant;
import java.util.List;
import rungwise.diagnosis.SpotAnswer;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.Undone;
import tools.jackson.databind.JsonNode;

/**
 * A spot as it stands now.
 *
 * @param id       by which it is asked for again
 * @param at       when its question was kept
 * @param question what is known of it now, in ids, with what was tried; asked as a ladder it gives the same answer
 * @param letGo    pointers to what was told and no longer holds, as the visit is over
 * @param attempts made on it, oldest first, as the log has them
 * @param undone   attempts that were taken back, in the order in which they were
 * @param answer   to that question
 */
public record SpotNow(String id, Instant at, JsonNode question, List<String> letGo, List<Attempt> attempts, List<Undone> undone,
                      SpotAnswer answer) {
    public SpotNow {
        letGo = List.copyOf(letGo);
        attempts = List.copyOf(attempts);
        undone = List.copyOf(undone);
    }
}
