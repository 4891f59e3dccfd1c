package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** A method does not come again on this spot, or not any more. */
public record Climbed(String method, List<Figure> figures) implements Conclusion {
    /** By what a try of itself showed, not by one of another. */
    public boolean isByOwnTry() {
        return figures.stream().anyMatch(f -> f.name().equals("tried") && f.value().equals(method));
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(method));
    }
}
