package rungwise.rules.fact;

import java.util.List;
import rungwise.knowledge.surface.Place;
import rungwise.text.Figure;

/** Where on the vehicle the spot is. */
public record Where(Place place) {
    public boolean isEdge() {
        return place.edge();
    }

    public List<Figure> figures() {
        return List.of(Figure.of("place", place.name()));
    }
}
