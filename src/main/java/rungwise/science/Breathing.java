package rungwise.science;

/** What a respirator may be used against. */
public final class Breathing {
    private Breathing() {
    }

    /**
     * Maximum use concentration: assigned protection factor times limit, never above what is immediately dangerous
     * (29 CFR 1910.134(d)(3)(i)).
     *
     * @param factor    assigned protection factor, 1 or more
     * @param limit     exposure limit, above 0
     * @param dangerous IDLH in the same unit; infinite where none is set
     */
    public static double maximumUse(double factor, double limit, double dangerous) {
        return Math.min(factor * limit, dangerous);
    }

    /** Whether a respirator of that factor is enough for a concentration. */
    public static boolean isEnough(double factor, double concentration, double limit, double dangerous) {
        return concentration <= maximumUse(factor, limit, dangerous) && concentration < dangerous;
    }
}
