package rungwise.knowledge.matter;

/** How well a way takes a component where it reaches it. */
public enum Grade {
    NOT, SLIGHTLY, PARTLY, WELL;

    /** One step weaker. */
    Grade less() {
        return switch (this) {
            case NOT, SLIGHTLY -> NOT;
            case PARTLY -> SLIGHTLY;
            case WELL -> PARTLY;
        };
    }

    /** The better of the two. */
    Grade or(Grade other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
