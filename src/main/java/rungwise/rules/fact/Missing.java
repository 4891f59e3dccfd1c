package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/** A fact the question does not give, by its name there. */
public record Missing(String fact) {
    public List<Figure> figures() {
        return List.of(Figure.of("untold", fact));
    }
}
