package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.knowledge.method.Method;
import rungwise.text.Figure;
import rungwise.text.Texts;

/**
 * Yes, but.
 *
 * @param template what it says, naming its figures in braces
 * @param guardsPeople it keeps people from harm, not the vehicle: it is read first and never left out
 */
public record Caution(String method, String template, List<Figure> figures, boolean guardsPeople) implements Conclusion {
    public Caution(String method, String template, List<Figure> figures) {
        this(method, template, figures, false);
    }

    public static Caution toPeople(String method, String template, List<Figure> figures) {
        return new Caution(method, template, figures, true);
    }

    @Override
    public String key() {
        return method + " " + template + " " + figures;
    }

    /** What a person reads: the template with its figures. */
    public String text() {
        return Texts.chosen().fill(template, figures);
    }

    @Override
    public Map<Entry, List<String>> named() {
        return method.equals(Method.EVERY) ? Map.of() : Map.of(Entry.METHOD, List.of(method));
    }
}
