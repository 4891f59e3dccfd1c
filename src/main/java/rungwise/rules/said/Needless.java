package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.knowledge.draft.Entry;
import rungwise.text.Figure;

/**
 * The trade does not take this here: it does no harm, and something else does the work.
 *
 * @param instead the method that does; empty where none has to be there for it
 */
public record Needless(String method, String instead, List<Figure> figures) implements Conclusion {
    public static Needless here(String method, List<Figure> figures) {
        return new Needless(method, "", figures);
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, instead.isEmpty() ? List.of(method) : List.of(method, instead));
    }
}
