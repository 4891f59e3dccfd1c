package rungwise.knowledge.surface;

/** A weakness or peculiarity of a surface that a rule may speak of. Adding one never makes a surface more tolerant. */
public enum Trait {
    /** Thermoplastic finish: its own kind of solvent dissolves it again. */
    RE_DISSOLVES,
    /** Acrylic under stress: alcohol crazes it, minutes to days later. */
    CRAZES,
    /** Polycarbonate under stress: alkali, ketone, aromatic and amines crack it. */
    STRESS_CRACKS,
    /** Holds a plasticiser that solvents draw out. */
    PLASTICISED,
    /** The texture is the finish: any polish shows as a gloss patch for good. */
    TEXTURE_IS_FINISH,
    /** Grain or pores that clay and polish embed in. */
    POROUS_TEXTURE,
    /** Gloss: every fine scratch shows. */
    SHOWS_MARRING,
    /** Somebody, or a sensor, looks through it. */
    SEEN_THROUGH,
    /** Transparent plastic: blades and hard brushes mark it. */
    CLEAR_PLASTIC,
    /** Edges that a jet, blade or steam lifts. */
    LIFTS_AT_EDGE,
    /** Shrinks or lets go with heat. */
    HEAT_SHRINKS,
    /** Finish still losing solvent. */
    CURING,
    /** A coating or wax on top that the owner paid for. */
    COATED,
    /** Aluminium: dissolves in acid and in alkali. */
    AMPHOTERIC,
    /** Bare, uncoated metal. */
    BARE_METAL,
    /** Thin anodic oxide: its whitening is permanent. */
    ANODISED,
    /** Toughened glass: may carry fused fines that a blade drags. */
    FUSED_FINES,
    /** Cracks when cold and hot meet. */
    THERMAL_SHOCK,
    /** Flaking or delaminating. */
    FLAKING,
    /** Pigmented topcoat without clear: colour comes off on the pad. */
    PIGMENT_ON_TOP,
    /** May hold lead or chromate pigment. */
    LEAD_SUSPECT,
    /** A film that can be levelled and refined, within a budget: the one strength among weaknesses. */
    REFINABLE,
    /** A film of which clay, pad and paper take something. It follows from {@link #REFINABLE} and, unlike it, stays beside any other surface. */
    LOSES_FILM,
    /** Painted plastic that gives: its paint holds a softener. */
    FLEXES,
    /** A paint gauge does not read here. */
    NO_GAUGE,
    /** Too little film left for heavy work. */
    THIN,
    /** Inside the vehicle, or holds electrics: no running water; it is wiped and sucked, not rinsed. */
    NO_RUNNING_WATER,
    /** Must not be wetted through: glue, foam or board beneath lets go or rings. */
    NO_SOAKING,
    /** Wool, leather, dyed or metallic: an oxidiser takes its colour or its strength. */
    BLEACHES,
    /** People's lives hang on it (belts, airbag covers, child seats): nothing that weakens it unseen. */
    HOLDS_PEOPLE,
    /** Porous: what is put on it goes in and stays in. */
    SOAKS,
    /** Any wetting leaves a stain or a ring; only dry work. */
    STAINS_WHEN_WET,
    /** Plain water is all that its makers agree on. */
    WATER_ONLY,
    /** Raised fibre that hard rubbing or heat mats. */
    NAP,
    /** Dye that may run or rub off. */
    DYE_BLEEDS,
    /** Soft-touch paint that ages to a sticky coat and rolls off. */
    SOFT_TOUCH,
    /** A mat beneath it senses who sits there. */
    OCCUPANT_SENSOR,
    /** Connectors and wiring that water at pressure enters. */
    WIRING,
    /** High voltage close by. */
    HIGH_VOLTAGE,
    /** Braking depends on its grip: nothing greasy. */
    MUST_GRIP,
    /** Cracks or stiffens when chilled hard. */
    BREAKS_WHEN_COLD,
    /** Bright metal plating under a micrometre thick: once through, it is gone. */
    PLATED,
    /** Crumbs of carbon steel stay in it and rust. */
    EMBEDS_IRON,
    /** A sensor or camera looks, listens or measures through it. */
    SENSOR_FACE,
    /** An optical coat under a micrometre thick, made by a maker who says what it bears. */
    OPTICAL_COAT,
    /** Printed heater or aerial lines: a scratch across one breaks the circuit. */
    PRINTED_LINES
}
