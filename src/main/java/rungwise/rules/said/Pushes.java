package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/**
 * One method takes its place in the ladder from another, which comes first.
 *
 * @param waits the later one is slow and only gives way; it does not hand its place on
 */
public record Pushes(String first, String later, boolean waits, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(first, later));
    }
}
