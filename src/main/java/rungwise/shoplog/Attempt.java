package rungwise.shoplog;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rungwise.question.Question;

/**
 * One method tried once on one spot, and what came of it.
 *
 * @param id                 given by the log where the sender had none
 * @param at                 when it was tried, to the millisecond
 * @param shop               who tried it
 * @param spot               the shop's own name for the spot, so that several tries on it belong together
 * @param contaminant        id, or unknown
 * @param age                how old the deposit was then: ISO 8601 duration, or unknown
 * @param surface            ids, or unknown
 * @param method             id of what was done
 * @param advised            id of the method that was advised, where another was used
 * @param notFollowedBecause coded reasons, see knowledge/words/not-followed.yaml
 * @param prepared           washed, dry and cool: a try on an unprepared panel teaches nothing
 * @param minutes            worker minutes
 * @param photo              where a picture is kept; never the picture
 * @param revision           of the knowledge and rules that advised
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Attempt(String id, Instant at, String shop, Optional<String> bay, Optional<String> spot,
                      String contaminant, String age, List<String> surface, Question.Facts facts,
                      Question.Setting setting, String method, Optional<String> advised,
                      List<String> notFollowedBecause, Outcome outcome, boolean prepared, OptionalDouble minutes,
                      Optional<String> note, Optional<String> photo, String revision) {
    public Attempt {
        bay = or(bay);
        spot = or(spot);
        surface = List.copyOf(surface);
        facts = facts == null ? Question.Facts.NONE : facts;
        setting = setting == null ? Question.Setting.UNKNOWN : setting;
        advised = or(advised);
        notFollowedBecause = notFollowedBecause == null ? List.of() : List.copyOf(notFollowedBecause);
        minutes = minutes == null ? OptionalDouble.empty() : minutes;
        note = or(note);
        photo = or(photo);
    }

    /** What was left out when it was written is empty when it is read. */
    private static <T> Optional<T> or(Optional<T> given) {
        return given == null ? Optional.empty() : given;
    }
}
