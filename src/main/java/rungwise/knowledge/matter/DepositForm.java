package rungwise.knowledge.matter;


/** How a deposit lies: it decides which methods reach it at all. */
public enum DepositForm {
    /** It lies there. */
    LOOSE_DUST,
    /** Thin and wide. */
    FILM,
    /** Standing points. */
    SPECKS,
    /** Thick and single. */
    LUMP,
    /** Inside cloth, leather, wood or grained plastic. */
    SOAKED_IN,
    /** Nothing lies on the surface: it has changed itself. */
    DAMAGE,
    UNKNOWN
}
