package rungwise.knowledge.deposit;

/** By what a deposit marks the surface beneath it. */
public enum Attack {
    /** Acid, or salts that turn acid: of birds, insects, food, exhaust. */
    ACID,
    /** Lime, cement and ash. */
    ALKALI,
    /** What water leaves: lime, salts, silica. */
    MINERAL,
    /** Swelling or softening by what dissolves a finish. */
    SOLVENT,
    /** Dye that goes in. */
    COLOUR,
    /** Hot or rusting grains that sit in it. */
    METAL,
    /** Roots, spores and what living growth gives off. */
    GROWTH
}
