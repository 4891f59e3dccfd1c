package rungwise.knowledge.common;

/** Where a statement comes from. */
public enum Basis {
    /** The source was read. */
    PUBLISHED,
    /** A published value recalled, not looked up. */
    MEMORY,
    /** Taught and done in the trade; no source to name. */
    COMMON_PRACTICE
}
