package rungwise.knowledge.decision;

/** Where in working out an answer a figure counts. */
public enum Stage {
    /** What is worth trying. */
    WORTH,
    COST, ORDER,
    /** What it may be. */
    SUSPECTS,
    /** What to look at next, so as to name it. */
    CHECKS,
    /** After something was tried. */
    TRIES, CHANCES,
    /** Panel, air and sun. */
    SETTING,
    /** How much of it there is. */
    EXTENT,
    /** What is breathed in a bay. */
    AIR, WETNESS,
    /** How long hands are in an agent. */
    HANDS, RINSING,
    /** What a surface bears. */
    SURFACE,
    /** How an answer is said. */
    WORDS
}
