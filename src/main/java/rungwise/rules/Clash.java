package rungwise.rules;

import java.util.List;
import rungwise.text.Figure;

/**
 * Two agents, or an agent and a later tool, must not meet.
 *
 * @param visit  never in one visit, whatever is done between
 * @param bridge method ids that clear the first before the second
 * @param waitMinutes to let pass between
 */
public record Clash(String first, String then, boolean visit, List<String> bridge, double waitMinutes, String text,
                    List<Figure> figures) implements Conclusion {
    public Clash {
        bridge = List.copyOf(bridge);
    }

    public Clash(String first, String then, boolean visit, List<String> bridge, double waitMinutes, String text, String figures) {
        this(first, then, visit, bridge, waitMinutes, text, Figure.said(figures));
    }
}
