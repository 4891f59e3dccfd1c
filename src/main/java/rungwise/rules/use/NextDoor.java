package rungwise.rules.use;

import java.util.List;
import rungwise.knowledge.surface.Surface;
import rungwise.text.Figure;

/**
 * A candidate that would be barred on the surface next to the spot.
 *
 * @param use the method as it would be on that neighbour
 * @param why what was found there
 */
public record NextDoor(Use use, List<Figure> why) {
    public NextDoor {
        why = List.copyOf(why);
    }

    public String method() {
        return use.name();
    }

    public Surface neighbour() {
        return use.surface();
    }

    public List<Figure> figures() {
        return Figure.all(List.of(Figure.of("neighbour", neighbour().name())), why);
    }
}
