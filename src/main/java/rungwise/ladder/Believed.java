package rungwise.ladder;

import java.util.List;
import java.util.Map;
import rungwise.question.Question;

/**
 * What a deposit is believed to be, probability by contaminant.
 *
 * @param now       after everything that was seen and tried
 * @param beforeTry for each try of the question in turn, with the same signs, as it was before that try
 */
public record Believed(Map<String, Double> now, List<Map<String, Double>> beforeTry) {
    public Believed {
        beforeTry = List.copyOf(beforeTry);
    }

    /** A belief that the tries did not move. */
    public static Believed of(Map<String, Double> now, Question question) {
        return new Believed(now, question.tried().stream().map(t -> now).toList());
    }
}
