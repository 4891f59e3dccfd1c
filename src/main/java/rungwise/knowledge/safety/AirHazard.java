package rungwise.knowledge.safety;

/** What is breathed, by what takes it out of the air again. */
public enum AirHazard {
    /** Vapour of a solvent. */
    VAPOUR,
    /** Gas or mist of an acid. */
    ACID,
    /** Ammonia and amines. */
    AMMONIA,
    /** Mist or dust of a base or salt that gives off no gas to speak of. */
    BASE,
    /** Hypochlorite and the chlorine it lets go. */
    OXIDISER,
    /** Hydrogen peroxide, which no cartridge is made for. */
    PEROXIDE,
    /** Thioglycolate and hydrogen sulfide. */
    SULFUR,
    /** Vapour and mist of hardener. */
    ISOCYANATE,
    DUST
}
