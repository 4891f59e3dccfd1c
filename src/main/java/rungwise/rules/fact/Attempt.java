package rungwise.rules.fact;

import java.util.List;
import rungwise.knowledge.method.Agent;
import rungwise.text.Figure;

/**
 * Something tried before, with an agent it brought to the spot; a try that brought several makes several.
 *
 * @param told false where nobody knows what was used: its agent then holds whatever could react
 */
public record Attempt(String method, String family, Agent agent, String outcome, int times, double contactMinutes,
                      double hoursAgo, boolean signs, boolean counts, boolean told) {
    public List<Figure> figures() {
        return List.of(Figure.of("tried", method), Figure.of("times", times), Figure.of("outcome", outcome));
    }
}
