package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/**
 * Something to do now.
 *
 * @param method it is about this method; empty = about none
 * @param text   id of the sentence that says it, below {@code next.} in the message files
 * @param until  what ends it: a sentence of knowledge, or an id below {@code until.}; empty = nothing
 */
public record Next(Action action, String method, String text, String until, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return method.isEmpty() ? Map.of() : Map.of(Entry.METHOD, List.of(method));
    }
}
