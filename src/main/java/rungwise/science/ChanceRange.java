package rungwise.science;

/** How sure a chance is. */
public final class ChanceRange {
    /** A prior from the trade is taken to be worth this many tries. */
    public static final double WORTH_TRIES = 20;
    /** Standard deviations of an 80 % interval of a normal distribution. */
    private static final double EIGHTY_PERCENT = 1.2816;

    private ChanceRange() {
    }

    /**
     * Half width of the central 80 % interval of a Beta distribution with this mean and 20 tries behind it, by its
     * normal approximation: z·√(p(1−p)/(n+1)).
     *
     * @param mean 0 to 1
     */
    public static double halfWidth(double mean) {
        return halfWidth(mean, 0);
    }

    /**
     * The same with recorded tries beside those that the prior is worth.
     *
     * @param mean  0 to 1
     * @param tries 0 or more
     */
    public static double halfWidth(double mean, double tries) {
        return EIGHTY_PERCENT * Math.sqrt(mean * (1 - mean) / (WORTH_TRIES + tries + 1));
    }
}
