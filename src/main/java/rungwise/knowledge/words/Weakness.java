package rungwise.knowledge.words;

/** What damage that was there before makes of a surface. */
public enum Weakness {
    /** It lets go at its rim: a jet, blade, clay or tape takes more of it along. */
    LETS_GO,
    /** Metal lies bare: acid and standing water start rust. */
    BARES_METAL,
    /** A crack: heat and cold let it run, and what is wet creeps in. */
    CRACKED,
    /** Something stands above the rest, and a pad or paper takes it first. */
    STANDS_PROUD
}
