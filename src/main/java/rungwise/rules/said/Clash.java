package rungwise.rules.said;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import rungwise.text.Figure;
import rungwise.text.Texts;

/**
 * Two agents, or an agent and a later tool, must not meet.
 *
 * @param visit  never in one visit, whatever is done between
 * @param bridge method ids that clear the first before the second
 * @param waitMinutes to let pass between
 * @param template what it says, naming its figures in braces
 */
public record Clash(String first, String then, boolean visit, List<String> bridge, double waitMinutes, String template,
                    List<Figure> figures) implements Conclusion {
    public Clash {
        bridge = List.copyOf(bridge);
    }

    /** What a person reads: the template with its figures, {wait} among them. */
    public String text() {
        return Texts.chosen().fill(template, Figure.all(figures, List.of(Figure.of("wait", waitMinutes, "min"))));
    }

    /** Where two rules speak of the same two: what keeps them further apart counts. */
    public boolean isStricterThan(Clash other) {
        return Comparator.comparing(Clash::visit).thenComparing(Clash::waitMinutes).thenComparing(c -> c.bridge().size())
                .compare(this, other) > 0;
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.AGENT, List.of(first), Entry.AGENT_OR_TOOL, List.of(then), Entry.METHOD, bridge);
    }
}
