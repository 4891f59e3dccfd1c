package rungwise.rules;

import java.util.List;
import rungwise.knowledge.Surface;
import rungwise.knowledge.Zone;

/**
 * The job as a whole: the rungs that were chosen, on what, and where that is.
 *
 * @param rungs methods by id, in their order; each is a {@link Chosen} beside it
 */
public record Laid(List<String> rungs, Surface surface, Deposit deposit, Zone zone) {
    public Laid {
        rungs = List.copyOf(rungs);
    }

    public boolean isEmpty() {
        return rungs.isEmpty();
    }
}
