package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/** Days since the surface was painted. */
public record PaintAge(double days) {
    public List<Figure> figures() {
        return List.of(Figure.of("painted", days, "days"));
    }
}
