package rungwise.rules.use;

import java.util.List;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.Zone;
import rungwise.rules.fact.Deposit;

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
