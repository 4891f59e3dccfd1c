package rungwise.rules.use;

import java.util.List;
import rungwise.knowledge.safety.GloveMaterial;
import rungwise.text.Figure;

/**
 * Which gloves hold against an agent for as long as a method takes.
 *
 * @param charts         names of the charts that count for it
 * @param glove          the first of the shop's materials that holds, or the one that holds longest
 * @param minutes        its shortest charted time over all that the agent holds
 * @param thinMinutes    the same for thin disposable nitrile
 * @param contactMinutes how long hands are in it
 */
public record HandCover(String method, String agent, List<String> charts, GloveMaterial glove, double minutes,
                        double thinMinutes, double contactMinutes) {
    public HandCover {
        charts = List.copyOf(charts);
    }

    public List<Figure> figures() {
        return List.of(Figure.of("agent", agent), Figure.of("handsInIt", Math.ceil(contactMinutes), "min"),
                Figure.of("charts", String.join(", ", charts)), Figure.of("glove", glove.words()),
                Figure.of("gloveMinutes", minutes, "min"), Figure.of("thinMinutes", thinMinutes, "min"));
    }
}
