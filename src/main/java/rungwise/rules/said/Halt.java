package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;
import rungwise.text.Texts;

/**
 * Harm was done or is showing: no further try on this spot.
 *
 * @param template what it says, naming its figures in braces
 */
public record Halt(String template, List<Figure> figures) implements Conclusion {
    /** What a person reads: the template with its figures. */
    public String text() {
        return Texts.chosen().fill(template, figures);
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of();
    }
}
