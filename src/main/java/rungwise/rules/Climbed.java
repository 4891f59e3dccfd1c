package rungwise.rules;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** A method does not come again on this spot, or not any more. */
public record Climbed(String method, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(method));
    }
}
