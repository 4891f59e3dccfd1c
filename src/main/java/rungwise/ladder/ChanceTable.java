package rungwise.ladder;

import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.SurfaceKind;

/**
 * Where chances come from. It must not change while a question is answered. The order of the ladder, grades, bars,
 * gates and protection never ask it: a log may say how often a method works, and nothing else.
 */
@FunctionalInterface
public interface ChanceTable {
    /** What knowledge says, whatever happened since. */
    ChanceTable PRIOR = (contaminant, method, surface) -> Likely.prior(contaminant.chances(method));

    Likely of(Contaminant contaminant, Method method, SurfaceKind surface);
}
