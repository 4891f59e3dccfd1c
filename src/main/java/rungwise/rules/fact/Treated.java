package rungwise.rules.fact;

import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.Trait;

/** The surface as delicate as it must be treated. */
public record Treated(Surface surface) {
    public boolean is(Trait trait) {
        return surface.is(trait);
    }
}
