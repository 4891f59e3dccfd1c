package rungwise.rules;

import rungwise.knowledge.Surface;
import rungwise.knowledge.Trait;

/** The surface as delicate as it must be treated. */
public record Treated(Surface surface) {
    public boolean is(Trait trait) {
        return surface.is(trait);
    }
}
