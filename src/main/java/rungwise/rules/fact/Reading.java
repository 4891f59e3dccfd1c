package rungwise.rules.fact;

import java.util.List;
import rungwise.knowledge.common.Range;
import rungwise.text.Figure;

/** Gauge readings in micrometres: the thinnest and thickest total. */
public record Reading(double lowest, double highest) {
    public List<Figure> figures() {
        return List.of(Figure.of("totalFilm", new Range(lowest, highest), "µm"));
    }
}
