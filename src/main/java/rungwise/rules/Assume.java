package rungwise.rules;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** Something unknown is taken to be so, and said aloud. */
public record Assume(String fact, String value, List<Figure> figures) implements Conclusion {

    public Assume(String fact, String value, String figures) {
        this(fact, value, Figure.said(figures));
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of();
    }
}
