package rungwise.knowledge.overlay;

/** Where the pH in use of a product comes from. */
public enum AcidityFrom {
    /** It is used as sold. */
    NEAT,
    /** Its label says so. */
    TOLD,
    /** It was reckoned from what the sheet names. */
    COMPUTED,
    /** Nobody knows better than the pH as sold. */
    SOLD
}
