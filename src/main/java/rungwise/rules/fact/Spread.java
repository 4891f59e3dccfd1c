package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/** How much of it there is; absent where nobody said. */
public record Spread(double areaM2) {
    public List<Figure> figures() {
        return List.of(Figure.of("area", Math.round(areaM2 * 1000) / 1000.0, "m²"));
    }
}
