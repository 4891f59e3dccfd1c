package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/** What the customer said to a gate or a method. */
public record Answered(String about, boolean granted) {
    public List<Figure> figures() {
        return List.of(Figure.of(granted ? "granted" : "refused", about));
    }
}
