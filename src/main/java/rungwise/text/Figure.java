package rungwise.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Range;

/**
 * One thing that was found, in a form that a page can show and translate. Its numbers are rounded here, so that a rule need not.
 *
 * @param name  what it is, by which a message file knows its label
 * @param value a number, a range, or words: the name of an entry, or a sentence of knowledge
 * @param unit  of value and limit; empty for words
 * @param limit what it was held against, where it was: of the same kind as the value
 */
public record Figure(String name, Object value, Optional<String> unit, Optional<Object> limit) {
    private static final String FOUND = "found";

    public Figure {
        if (!isShown(value) || limit.filter(l -> !isShown(l)).isPresent()) {
            throw new IllegalArgumentException("a figure is a number, a range or words: " + name + " " + value + " " + limit);
        }
        value = given(value);
        limit = limit.map(Figure::given);
    }

    private static Object given(Object value) {
        return value instanceof Double number ? Double.valueOf(Figures.given(number))
                : value instanceof Range range ? new Range(Figures.given(range.from()), Figures.given(range.to())) : value;
    }

    private static boolean isShown(Object value) {
        return value instanceof Number || value instanceof Range || value instanceof String;
    }

    public static Figure of(String name, Object value) {
        return new Figure(name, value, Optional.empty(), Optional.empty());
    }

    public static Figure of(String name, Object value, String unit) {
        return new Figure(name, value, Optional.of(unit), Optional.empty());
    }

    public static Figure against(String name, Object value, String unit, Object limit) {
        return new Figure(name, value, unit.isEmpty() ? Optional.empty() : Optional.of(unit), Optional.of(limit));
    }

    /** In words alone. */
    public static List<Figure> said(String words) {
        return words.isEmpty() ? List.of() : List.of(of(FOUND, words));
    }

    @SafeVarargs
    public static List<Figure> all(List<Figure>... parts) {
        List<Figure> all = new ArrayList<>();
        for (List<Figure> part : parts) {
            all.addAll(part);
        }
        return List.copyOf(all);
    }
}
