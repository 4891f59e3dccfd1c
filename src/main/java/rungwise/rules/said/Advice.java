package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;
import rungwise.text.Texts;

/**
 * A word of the trade that belongs to no single rung: what a sign during the work says, what comes due later.
 *
 * @param about what it is about: preparation, wheels, clay, aftercare, neighbour …
 * @param template what it says, naming its figures in braces
 */
public record Advice(String about, String template, List<Figure> figures) implements Conclusion {
    /** What a person reads: the template with its figures. */
    public String text() {
        return Texts.chosen().fill(template, figures);
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of();
    }
}
