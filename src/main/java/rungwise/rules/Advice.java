package rungwise.rules;

import java.util.List;
import rungwise.text.Figure;

/**
 * A word of the trade that belongs to no single rung: what a sign during the work says, what comes due later.
 *
 * @param about what it is about: preparation, wheels, clay, aftercare, neighbour …
 */
public record Advice(String about, String text, List<Figure> figures) implements Conclusion {

    public Advice(String about, String text, String figures) {
        this(about, text, Figure.said(figures));
    }
}
