package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** A grade on this surface is higher than on the reference surface. */
public record Moved(String method, Cause cause, int by, List<Figure> figures) implements Conclusion {
    /** Which of the three causes moves. */
    public enum Cause { MECHANICAL, CHEMICAL, THERMAL }

    public Moved {
        if (by < 0) {
            throw new IllegalArgumentException("a grade only rises, " + method + " was moved by " + by);
        }
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(method));
    }
}
