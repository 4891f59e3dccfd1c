package rungwise.knowledge.chemistry;

/** Reactive groups of an agent: what decides which two chemistries must not meet. */
public enum Reactive {
    ACID, ALKALI, THIOL, HYPOCHLORITE, PEROXIDE, AMMONIA, QUAT, ANIONIC, ENZYME, FLUORIDE, FLAMMABLE, OILY, HEAT, OXALATE, FINISH_STRIPPER
}
