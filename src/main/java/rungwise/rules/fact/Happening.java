package rungwise.rules.fact;

import java.util.List;
import rungwise.knowledge.Circumstance;
import rungwise.text.Figure;

/** A circumstance that was reported. */
public record Happening(Circumstance circumstance) {
    public List<Figure> figures() {
        return List.of(Figure.of("reported", circumstance.name()));
    }
}
