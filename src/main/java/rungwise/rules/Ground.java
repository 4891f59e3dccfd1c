package rungwise.rules;

import rungwise.knowledge.Surface;
import rungwise.knowledge.SurfaceKind;
import rungwise.knowledge.Trait;

/** The surface as the question named it, before the facts are weighed. */
public record Ground(Surface surface, boolean known) {
    /** Paint, or something that may be paint. */
    public boolean isPaint() {
        return surface.mayBe(SurfaceKind.PAINT);
    }

    public boolean is(Trait trait) {
        return surface.is(trait);
    }
}
