package rungwise.knowledge.decision;

import java.util.Locale;

/**
 * Every decision that the program asks for. What each says, and how much it is, stands in decisions.yaml; loading holds the two against
 * each other.
 */
public enum DecisionId {
    NEEDLESS, POINTLESS, REAL_CHANCE, PART_THAT_COUNTS, MARK_EXPECTED, ENOUGH, SAME_AGAIN, AS_QUICK, SLOW, FINEST_FIRST, HARSHER_FOR_LESS,
    NOT_WORTH_ITS_MINUTES, MOST_WEIGHED, MINUTE_OF_WORK, MINUTE_OF_WAITING, MICRON_OF_FILM, VISIBLE_MARK,
    HANDING_OVER, FILM_THAT_COUNTS, HAZARD_COUNTS, BAR_COUNTS, KNOWN_FROM, LIKELY_FROM, SUSPECTS_WEIGHED, A_VISIT, LEARNT_HERE,
    COMES_BACK, GENTLER_FIRST, TRY_MAY_MISLEAD, KEPT_WET, LIQUID_DRIES_FIRST, GEL_OUTLASTS, RINSED_AS_STATED, RINSED_UNTIL_NEUTRAL, HARDLY_ANY_LEFT,
    MOST_PASSES, THIN_SOLVENT, WEAK_SOLVENT, LARGE_MOLECULE, CHEMISTRY_BEARS_OUT, STRONG_ACID, LISTED_FROM,
    LISTED_AT_LEAST, LISTED_AT_MOST, TELLING_FROM, SIGN_SPEAKS, PARTLY_TELLS, SEEN_OTHERWISE, WORTH_A_CHECK,
    RARE_OUTCOME, FAN_AIRS_AT_MOST, WORTH_AIRING, SOMETIMES_FROM, OFTEN_FROM, USUALLY_FROM;

    private final String id = name().toLowerCase(Locale.ROOT).replace('_', '-');

    /** As decisions.yaml writes it: words joined by hyphens. */
    public String id() {
        return id;
    }
}
