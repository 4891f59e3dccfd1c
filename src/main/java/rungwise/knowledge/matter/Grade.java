package rungwise.knowledge.matter;

/** How much of a component one correct attempt takes where it reaches it. */
public enum Grade {
    NOT(0), SLIGHTLY(0.15), PARTLY(0.40), WELL(0.85);

    private final double share;

    Grade(double share) {
        this.share = share;
    }

    public double share() {
        return share;
    }

    /** One step weaker. */
    Grade less() {
        return values()[Math.max(0, ordinal() - 1)];
    }
}
