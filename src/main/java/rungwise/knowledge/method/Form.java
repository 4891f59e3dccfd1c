package rungwise.knowledge.method;

/** How an agent sits on a panel. */
public enum Form {
    LIQUID, GEL, FOAM, PASTE, POWDER, GAS
}
