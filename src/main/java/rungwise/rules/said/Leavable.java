package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** What is left of the deposit harms nobody and nothing, and may stay where it is. */
public record Leavable(List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of();
    }
}
