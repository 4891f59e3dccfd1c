package rungwise.knowledge;

/** Chemistry and texture of a deposit that rules speak of. */
public enum Nature {
    IRON, CARBONATE, GRITTY, PROTEIN, ACIDIC, ALKALINE, DUSTY, FLAMMABLE, SMEARS, SOLVENT_LIKE
}
