package rungwise.science;

/**
 * Hardness and alkalinity of water, both in mg/l as calcium carbonate. Classes by hardness: US Geological Survey, soft to
 * 60, moderately hard to 120, hard to 180, very hard above.
 */
public enum Hardness {
    SOFT(60), MODERATE(120), HARD(180), VERY_HARD(Double.POSITIVE_INFINITY);

    /** Grams of calcium carbonate that take up one mole of acid: half its molar mass of 100.09. */
    private static final double GRAMS_PER_EQUIVALENT = 50.04;
    private static final double MILLI = 1000;

    private final double upToMgL;

    Hardness(double upToMgL) {
        this.upToMgL = upToMgL;
    }

    /**
     * The class of a water.
     *
     * @param mgL hardness as calcium carbonate, 0 or more
     */
    public static Hardness of(double mgL) {
        for (Hardness one : values()) {
            if (nonNegative(mgL) <= one.upToMgL) {
                return one;
            }
        }
        return VERY_HARD;
    }

    /** The most this class holds, mg/l; infinite for the last. */
    public double upToMgL() {
        return upToMgL;
    }

    public boolean isHard() {
        return compareTo(HARD) >= 0;
    }

    /**
     * Alkalinity in mol/l of acid that it takes up, mg/l ÷ 50.04 g ÷ 1000.
     *
     * @param mgL alkalinity as calcium carbonate, 0 or more
     */
    public static double alkalinityM(double mgL) {
        return nonNegative(mgL) / GRAMS_PER_EQUIVALENT / MILLI;
    }

    /**
     * Lime that a film of water leaves when it dries, mg/m²: hardness times thickness. All of the hardness counts as lime;
     * what is gypsum instead weighs a third more.
     *
     * @param mgL          hardness as calcium carbonate, 0 or more
     * @param litresPerM2  what clings, 0 or more
     */
    public static double leftMgM2(double mgL, double litresPerM2) {
        return nonNegative(mgL) * nonNegative(litresPerM2);
    }

    private static double nonNegative(double value) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException("water holds 0 or more of it, not " + value);
        }
        return value;
    }
}
