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
    /** Which method comes after which and is like which, and which chemistries clash; what that makes of a ladder. */
    ORDER,
    /** What the tries on this spot leave of the ladder. */
    TRIED,
    /** What to do now. */
    NEXT,
    /** What surrounds the chosen rungs. */
    CLOSE;

    public String group() {
        return name().toLowerCase(Locale.ROOT);
    }
}
