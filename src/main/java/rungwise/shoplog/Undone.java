package rungwise.shoplog;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import tools.jackson.databind.JsonNode;

/**
 * An attempt that was taken back. It stays in the log as it was made, and counts for nothing.
 *
 * @param attempt as it was kept
 * @param told    fields of a question that were told with it and went with it
 * @param at      when it was taken back
 * @param by      who took it back
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Undone(Attempt attempt, JsonNode told, Instant at, String by, String why) {
}
