package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.knowledge.method.Method;
import rungwise.text.Figure;

/**
 * What the person wears or arranges. Items are only ever added.
 *
 * @param where the place that was not told and for which it is needed; empty = everywhere
 */
public record Protect(String method, List<String> items, List<Figure> figures, String where) implements Conclusion {
    public Protect {
        items = List.copyOf(items);
    }

    public Protect(String method, List<String> items, List<Figure> figures) {
        this(method, items, figures, "");
    }

    @Override
    public String key() {
        return method + " " + items + " " + figures + " " + where;
    }

    @Override
    public Map<Entry, List<String>> named() {
        return method.equals(Method.EVERY) ? Map.of(Entry.PPE, items)
                : Map.of(Entry.METHOD, List.of(method), Entry.PPE, items);
    }
}
