package rungwise.rules;

import java.util.Optional;
import rungwise.knowledge.Respirator;

/**
 * What a method would put into the air of a closed bay, where nobody told where the work is.
 *
 * @param respirator the least that is enough there, or else the strongest made for vapour
 */
public record AiringIfClosed(Airing closed, Optional<Respirator> respirator) {
    public String method() {
        return closed.method();
    }

    public boolean overLimit() {
        return closed.overLimit();
    }

    public boolean hasRespirator() {
        return respirator.isPresent();
    }

    public String figures() {
        return "outdoors or indoors not told; if closed, " + closed.figures();
    }
}
