package rungwise.knowledge.deposit;

/** Chemistry and texture of a deposit that rules speak of. */
public enum Nature {
    CARBONATE, GRITTY, PROTEIN, ACIDIC, ALKALINE, DUSTY, SOLVENT_LIKE,
    /** Taken up dry before any water. */
    DRY_FIRST,
    /** Dissolves in plain water at any age. */
    SOLUBLE_SALT,
    /** Ammonium salt or urea: bleach turns it into chloramines. */
    AMMONIACAL,
    /** Heat and alcohol coagulate it. */
    SETS_WITH_HEAT,
    /** Harms whoever breathes it as a mist. */
    MIST_HARMS,
    /** Nobody touches it before its label has been read. */
    LABEL_FIRST,
    /** Its colour fades in light and warmth. */
    FADES,
    /** Comes back as long as its source stays. */
    REGROWS,
    /** Soaked cloths heat up and catch fire by themselves. */
    SELF_HEATS,
    /** Has softened the paint, which hardens again in days. */
    SOFTENS_PAINT,
    /** The finish itself is coming away. */
    FLAKES,
    /** Tannin or vegetable dye: alkali and heat darken and fix it. */
    TANNIN,
    /** Melts: warmth drives it into pile and grain. */
    MELTS_IN,
    /** Dry, its dust makes whoever breathes it ill: wetted before anything moves it. */
    INFECTIOUS_DUST,
    /** Water or damp makes it set: none near it before it is hard. */
    WATER_CURES,
    /** Droppings or nest of rodents: soaked in disinfectant before anything else touches it. */
    DROPPINGS,
    /** Food: it carries germs once it has turned, and is no body matter. */
    FOOD,
    /** Fresh, lumps of it lie on top: they are lifted before anything presses on them. */
    SOLIDS
}
