package rungwise.knowledge.method;

/** What a method is for; only {@link #REMOVE} can become a rung. */
public enum MethodKind {
    REMOVE, PREP, BRIDGE, CLEAN_UP, CORRECT, EMERGENCY, REFER, WAIT
}
