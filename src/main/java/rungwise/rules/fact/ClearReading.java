package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/** Clear coat alone, in micrometres, from a multilayer gauge. */
public record ClearReading(double microns) {
    public List<Figure> figures() {
        return List.of(Figure.of("clear", microns, "µm"));
    }
}
