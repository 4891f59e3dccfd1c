package rungwise.rules.use;

import rungwise.knowledge.method.Severity;

/**
 * A method that nothing but earlier tries keeps from this spot, as the order of the ladder sees it.
 *
 * @param severity       on this surface
 * @param hardenedChance what knowledge says of a hardened deposit; of several suspects the least
 * @param asks           needs somebody's agreement
 */
public record Permitted(Use use, Severity severity, double hardenedChance, boolean asks) {
    public String name() {
        return use.method().id();
    }

    public double dwellMinutes() {
        return use.method().dwell().usual();
    }

    public double filmMicrons() {
        return severity.filmMicrons();
    }

    public int chemicalGrade() {
        return severity.chemical();
    }

    public int worstGrade() {
        return severity.worst();
    }
}
