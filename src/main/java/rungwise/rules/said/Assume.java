package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;
import rungwise.text.Texts;

/**
 * Something unknown is taken to be so, and said aloud.
 *
 * @param fact     as the question calls it
 * @param template what it is taken to be, naming its figures in braces
 */
public record Assume(String fact, String template, List<Figure> figures) implements Conclusion {
    public String value() {
        return Texts.chosen().fill(template, figures);
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of();
    }
}
