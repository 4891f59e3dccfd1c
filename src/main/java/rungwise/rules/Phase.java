package rungwise.rules;

import java.util.Locale;

/** The ruleflow groups, in the order in which a question passes through them. */
public enum Phase {
    /** Spot, surface and setting become holds, assumptions and a surface as delicate as the facts ask. */
    DERIVE,
    /** A method on a surface, whatever the day: kept for every question on that surface. */
    STANDING,
    /** The same method in today's setting, with these people, this shelf, this consent. */
    TODAY,
    /** Which method comes after which, and which chemistries clash. */
    ORDER,
    /** What surrounds the chosen rungs. */
    CLOSE;

    public String group() {
        return name().toLowerCase(Locale.ROOT);
    }
}
