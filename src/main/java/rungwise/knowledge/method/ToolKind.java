package rungwise.knowledge.method;

/** What touches the surface, by how it acts. */
public enum ToolKind {
    /** Nothing touches: spray, rinse, rest. */
    NONE,
    CLOTH, BRUSH, JET,
    /** A flat edge that shears. */
    EDGE,
    /** A point or line. */
    POINT,
    /** Clay or clay-like polymer. */
    CLAY,
    /** Rigid abrasive foam or web whose cut cannot be graded or refined. */
    UNGRADED_ABRASIVE,
    /** Polish on a pad. */
    POLISH,
    /** Abrasive paper or file. */
    PAPER,
    /** Hot air, steam, warm water bag. */
    HEAT,
    /** A nozzle under suction. */
    SUCTION,
    /** Tack: tape or roller. */
    TACK,
    /** Dry rubber that rolls or picks up. */
    RUBBER,
    /** Ice pack or cold spray. */
    COLD,
    /** A wheel that works by friction heat. */
    FRICTION_WHEEL;

    public boolean abrades() {
        return this == UNGRADED_ABRASIVE || this == POLISH || this == PAPER || this == FRICTION_WHEEL;
    }
}
