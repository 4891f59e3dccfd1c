package rungwise.knowledge.surface;

/** What a surface says to a kind of solvent, mildest first, so that the larger ordinal is the stricter verdict. */
public enum Verdict {
    /** Wipe on, wipe off, under two minutes. */
    OK,
    /** Only after a hidden test spot, short contact. */
    TEST,
    /** Do not use. */
    NO,
    /** Never: the harm is certain or cannot be seen in time. */
    BAR;

    public Verdict stricter(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public boolean forbids() {
        return compareTo(NO) >= 0;
    }
}
