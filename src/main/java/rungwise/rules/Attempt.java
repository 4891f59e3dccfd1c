package rungwise.rules;

import java.util.List;
import rungwise.knowledge.Agent;
import rungwise.text.Figure;

/** Something tried before, with the agent it brought to the spot. */
public record Attempt(String method, String family, Agent agent, String outcome, int times, double contactMinutes,
                      double hoursAgo, boolean signs, boolean counts) {
    public List<Figure> figures() {
        return List.of(Figure.of("tried", method), Figure.of("times", times), Figure.of("outcome", outcome));
    }
}
