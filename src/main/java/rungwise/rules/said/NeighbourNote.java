package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** What a method would do to the surface next door, and how it is kept from it. */
public record NeighbourNote(String surface, String method, String action, List<Figure> figures) implements Conclusion {
    @Override
    public String key() {
        return surface + " " + method + " " + action + " " + figures;
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.SURFACE, List.of(surface), Entry.METHOD, List.of(method));
    }
}
