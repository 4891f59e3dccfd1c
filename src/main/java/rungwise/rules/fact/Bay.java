package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/** A room around the work; absent outdoors. */
public record Bay(double volumeM3, double airChangesPerHour) {
    public List<Figure> figures() {
        return List.of(Figure.of("bay", volumeM3, "m³"), Figure.of("airChanges", airChangesPerHour, "ach"));
    }
}
