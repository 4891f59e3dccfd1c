package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** Marring shows so many times as soon as on average gloss clear. */
public record Marring(String method, double times, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of();
    }
}
