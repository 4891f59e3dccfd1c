package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** A fact makes the surface as delicate as another. */
public record TreatAs(String surface, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.SURFACE, List.of(surface));
    }
}
