package rungwise.knowledge;

/** How an agent sits on a panel. */
public enum Form {
    LIQUID, GEL, FOAM, PASTE, POWDER, GAS
}
