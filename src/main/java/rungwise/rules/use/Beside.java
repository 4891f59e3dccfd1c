package rungwise.rules.use;

import java.util.List;
import rungwise.text.Figure;

/**
 * A candidate that would be permitted on the surface next to the spot.
 *
 * @param use the method as it would be on that neighbour
 */
public record Beside(Use use) {
    public String method() {
        return use.name();
    }

    public List<Figure> figures() {
        return List.of(Figure.of("neighbour", use.surface().name()));
    }
}
