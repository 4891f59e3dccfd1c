package rungwise.shoplog;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rungwise.question.Ages;
import rungwise.question.Question;

/**
 * What learning needs of an attempt.
 *
 * @param seq      its place in the log
 * @param warmestC hottest the panel had been since the deposit landed
 */
record Tried(long seq, String id, String shop, Optional<String> spot, String contaminant, List<String> surface,
             OptionalDouble ageHours, OptionalDouble warmestC, String method, Outcome outcome, boolean prepared, OptionalDouble minutes) {

    static Tried of(long seq, Attempt attempt) {
        return new Tried(seq, attempt.id(), attempt.shop(), attempt.spot(), attempt.contaminant(), attempt.surface(),
                attempt.age().equals(Question.UNKNOWN) ? OptionalDouble.empty()
                        : OptionalDouble.of(Ages.hours(attempt.age())),
                attempt.facts().warmestPanelC(), attempt.method(), attempt.outcome(),
                attempt.prepared(), attempt.minutes());
    }
}
