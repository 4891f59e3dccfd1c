package rungwise.rules;

import java.util.List;
import rungwise.text.Figure;

/** Harm was done or is showing: no further try on this spot. */
public record Halt(String text, List<Figure> figures) implements Conclusion {

    public Halt(String text, String figures) {
        this(text, Figure.said(figures));
    }
}
