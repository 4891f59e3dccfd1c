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

    /** Tries of a method on that deposit and family of surfaces, as they were made. */
    default Count count(Contaminant contaminant, Method method, SurfaceKind surface) {
        return Count.NONE;
    }

    /** Worker minutes over those that knowledge states. */
    default double pace(Method method) {
        return 1;
    }

    /** How many there were, and how many cleared it. */
    record Count(long tries, long cleared) {
        public static final Count NONE = new Count(0, 0);
    }
}
