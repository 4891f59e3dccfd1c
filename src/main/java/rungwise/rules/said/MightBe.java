package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** An unknown fact could make the surface as delicate as another: what would be barred then is asked for by a gate. */
public record MightBe(String surface, String gate, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.SURFACE, List.of(surface), Entry.GATE, List.of(gate));
    }
}
