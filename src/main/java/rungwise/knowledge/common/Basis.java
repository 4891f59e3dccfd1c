package rungwise.knowledge.common;

/** Where a statement comes from. */
public enum Basis {
    /** A named source says so, at a place where it can be looked up. */
    PUBLISHED,
    /** Reckoned by the program or a formula from figures that have a basis of their own. */
    COMPUTED,
    /** Taught and done in the trade; no such source to name. */
    COMMON_PRACTICE,
    /** Weighed here; the trade does not say it. */
    JUDGEMENT,
    /** A published value recalled, not looked up. */
    MEMORY
}
