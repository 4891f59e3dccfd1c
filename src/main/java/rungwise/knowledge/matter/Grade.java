package rungwise.knowledge.matter;

/** How well a way takes a component where it reaches it. */
public enum Grade {
    NOT, SLIGHTLY, PARTLY, WELL;

    /** One step weaker. */
    Grade less() {
        return values()[Math.max(0, ordinal() - 1)];
    }
}
