package rungwise.rules.fact;

import java.util.List;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.Trait;
import rungwise.text.Figure;

/** The surface as the question named it, before the facts are weighed. */
public record Ground(Surface surface, boolean known) {
    public boolean is(Trait trait) {
        return surface.is(trait);
    }

    public List<Figure> figures() {
        return List.of(Figure.of("surface", surface.name()));
    }
}
