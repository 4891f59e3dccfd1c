package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** A dwell is cut to a share of itself, and to at most some minutes. */
public record Narrow(String method, double share, double atMostMinutes, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(method));
    }
}
