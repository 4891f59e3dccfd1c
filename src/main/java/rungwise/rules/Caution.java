package rungwise.rules;

import java.util.List;
import rungwise.text.Figure;

/** Yes, but. */
public record Caution(String method, String text, List<Figure> figures) implements Conclusion {
    @Override
    public String key() {
        return method + " " + text + " " + figures;
    }

    public Caution(String method, String text, String figures) {
        this(method, text, Figure.said(figures));
    }
}
