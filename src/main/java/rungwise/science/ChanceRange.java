package rungwise.science;

/** How sure a chance is. */
public final class ChanceRange {
    /** Standard deviations of an 80 % interval of a normal distribution. */
    private static final double EIGHTY_PERCENT = 1.2816;

    private ChanceRange() {
    }

    /**
     * Half width of the central 80 % interval of a Beta distribution with this mean, by its normal approximation:
     * z·√(p(1−p)/(n+1)).
     *
     * @param mean  0 to 1
     * @param tries n: what a prior is worth and what was recorded beside it, 0 or more
     */
    public static double halfWidth(double mean, double tries) {
        return EIGHTY_PERCENT * Math.sqrt(mean * (1 - mean) / (tries + 1));
    }
}
