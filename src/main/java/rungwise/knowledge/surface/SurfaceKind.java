package rungwise.knowledge.surface;

/** What a surface is made as; decides who takes over when the ladder ends. */
public enum SurfaceKind {
    PAINT, FILM, LENS, GLASS, METAL, WHEEL, PLASTIC, RUBBER, SENSOR,
    /** Cloth, carpet, headliner, webbing, cloth tops. */
    TEXTILE,
    LEATHER,
    /** Displays. */
    SCREEN,
    WOOD,
    /** Gel coat and the like: a thick moulded skin, not a sprayed film. */
    GEL_COAT,
    /** Brakes, engine bay, charge port: parts that work, seen or not. */
    MACHINERY
}
