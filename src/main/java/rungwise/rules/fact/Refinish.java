package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/** Whether the panel was painted again after it left its maker. */
public record Refinish(boolean found) {
    public List<Figure> figures() {
        return List.of(Figure.of("refinish", found ? "found" : "none"));
    }
}
