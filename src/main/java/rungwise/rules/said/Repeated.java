package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** A method helped and may be used once more. */
public record Repeated(String method, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(method));
    }
}
