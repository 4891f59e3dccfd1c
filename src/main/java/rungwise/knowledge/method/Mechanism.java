package rungwise.knowledge.method;

import java.util.Locale;

/** How a method removes. */
public enum Mechanism {
    RINSE, HYDRATE, SURFACTANT, SAPONIFY, DISSOLVE, SWELL, CHELATE, NEUTRALISE, ACID_DISSOLVE, DIGEST, OXIDISE, KILL,
    SHEAR, ABRADE, SOFTEN_BY_HEAT, EMBRITTLE, ABSORB, SUCTION, FADE, DRY, PROTECT, NOTHING;

    /** As methods and mechanisms.yaml write it. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Whether it breaks a hold as another does, so that where one failed the other is likely to fail too. Reagents are
     * left out: acid, chelant, oxidiser and enzyme each have a partner of their own.
     */
    public boolean actsLike(Mechanism other) {
        return kin() == other.kin() && switch (this) {
            case CHELATE, ACID_DISSOLVE, NEUTRALISE, OXIDISE, DIGEST, KILL -> false;
            default -> true;
        };
    }

    /** Water with and without waiting, soap and alkali, solvent that dissolves and solvent that swells. */
    public Mechanism kin() {
        return switch (this) {
            case HYDRATE -> RINSE;
            case SAPONIFY -> SURFACTANT;
            case SWELL -> DISSOLVE;
            default -> this;
        };
    }
}
