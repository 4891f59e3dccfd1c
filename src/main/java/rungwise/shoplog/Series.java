package rungwise.shoplog;

import java.util.ArrayList;
import java.util.List;
import rungwise.knowledge.surface.SurfaceKind;

/**
 * What was tried on one spot, in its order: a later try is weighed knowing what failed before it.
 *
 * @param hardened belief that it had hardened, before the first try
 */
record Series(String contaminant, double hardened, List<Step> steps) {

    /**
     * One try.
     *
     * @param fresh    what the chance belongs to if it is fresh
     * @param hardened the same if it has hardened
     * @param worked   1 all of it, 0 nothing, between them a part
     * @param ifFresh  the prior
     */
    record Step(Cell fresh, Cell hardened, double worked, double ifFresh, double ifHardened) {
        SurfaceKind surface() {
            return fresh.surface();
        }
    }

    Series and(Step step) {
        List<Step> all = new ArrayList<>(steps);
        all.add(step);
        return new Series(contaminant, hardened, List.copyOf(all));
    }
}
