package rungwise.science;

/**
 * Mixing and thinning. Volumes are taken to add up, which errs by under 4 % for alcohol in water and less for the
 * rest; a bottle is therefore filled up to its mark, which makes the strength right whatever the volumes do.
 */
public final class Dilution {
    /** Specific gravity of pure ethanol at 20 °C against water (OIML R 22: 789.24 kg/m³ against 998.20). */
    private static final double ETHANOL_G_ML = 0.78924;

    private Dilution() {
    }

    /**
     * Share of concentrate where 1:n means one part to n parts of water: 1/(1+n). The reading used here.
     *
     * @param parts n, 0 or more
     */
    public static double oneToParts(double parts) {
        return 1 / (1 + nonNegative(parts, "parts"));
    }

    /**
     * Share of concentrate where 1:n is read as one part in n parts altogether: 1/n. Others read a label so, and mix
     * it stronger.
     *
     * @param parts n, 1 or more
     */
    public static double oneInParts(double parts) {
        if (!(parts >= 1)) {
            throw new IllegalArgumentException("one part in " + parts + " is more than the whole");
        }
        return 1 / parts;
    }

    /**
     * C₁·V₁ = C₂·V₂: how much of a stock makes a volume of a given strength.
     *
     * @param stockStrength  in any unit, above 0
     * @param wantedStrength in the same unit, 0 to the stock's
     * @param volume         in any unit, 0 or more; the answer has the same
     */
    public static double stockFor(double stockStrength, double wantedStrength, double volume) {
        if (!(wantedStrength >= 0 && wantedStrength <= stockStrength)) {
            throw new IllegalArgumentException("a stock of " + stockStrength + " cannot be thinned to " + wantedStrength);
        }
        return wantedStrength * nonNegative(volume, "volume") / stockStrength;
    }

    /** Concentrate and water for a bottle, filled up to the mark. */
    public record Mix(double concentrateMl, double waterMl) {
    }

    /**
     * What goes into a bottle.
     *
     * @param bottleMl size in ml, above 0
     * @param share    of the concentrate, 0 to 1
     */
    public static Mix bottle(double bottleMl, double share) {
        double concentrate = stockFor(1, share, bottleMl);
        return new Mix(concentrate, bottleMl - concentrate);
    }

    /**
     * What goes into the bottle of a foam lance, so that the panel gets the wanted share: the lance draws one part of
     * its bottle to {@code drawParts} parts of water that pass it.
     *
     * @param bottleMl  size of the lance's bottle in ml
     * @param drawParts parts of water to one drawn, measured by emptying a full bottle into a bucket; 0 or more
     * @param share     wanted on the panel
     * @throws IllegalArgumentException where even neat concentrate would reach the panel too weak
     */
    public static Mix lance(double bottleMl, double drawParts, double share) {
        return bottle(bottleMl, stockFor(1, share, 1 + nonNegative(drawParts, "drawParts")));
    }

    /** Share that reaches the panel from a lance whose bottle holds a given share. */
    public static double onPanel(double shareInBottle, double drawParts) {
        return shareInBottle * oneToParts(drawParts);
    }

    /**
     * Share left when a wet film on the panel takes the agent up.
     *
     * @param share  in the agent, 0 to 1
     * @param laidMl agent laid on, per m²
     * @param wetMl  water already there, per m²
     */
    public static double onWetPanel(double share, double laidMl, double wetMl) {
        return share * laidMl / (laidMl + wetMl);
    }

    /**
     * Percent by mass of ethanol of a given percent by volume, %mass = %vol·ρ_ethanol/ρ_mixture at 20 °C.
     *
     * @param percentByVolume 0 to 100
     * @param mixtureGMl      density of the mixture in g/ml at 20 °C, from an alcohol table
     */
    public static double percentByMass(double percentByVolume, double mixtureGMl) {
        return percentByVolume * ETHANOL_G_ML / mixtureGMl;
    }

    /**
     * The same the other way round.
     *
     * @param percentByMass 0 to 100
     * @param mixtureGMl    density of the mixture in g/ml at 20 °C
     */
    public static double percentByVolume(double percentByMass, double mixtureGMl) {
        return percentByMass * mixtureGMl / ETHANOL_G_ML;
    }

    private static double nonNegative(double value, String what) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException(what + " is 0 or more, not " + value);
        }
        return value;
    }
}
