package rungwise.science;

/**
 * How far a mark beneath a deposit has come. Warmth and time add up to a dose, which is 1 where half of such deposits have
 * marked sound clear coat; belief is logistic in the logarithm of the dose. Basis: memory. That a panel is warm for a part of
 * each day only, and the shape of the curve, are of the trade; its width follows from what is reported of acid insects, whose
 * first marks are told of after five hours by some and after two days by others (source acid-insect-splatter).
 */
public final class Marking {
    /** From one deposit in ten to nine in ten the dose grows ninefold, as from five hours to two days. */
    private static final double STEEPNESS = 2;
    private static final double DAY = 24;

    private Marking() {
    }

    /**
     * The dose, without unit.
     *
     * @param ageHours  age, 0 or more
     * @param sunHours  hours of each day on which the panel is as warm as told, 0 to 24; the first of them come at once
     * @param coolHours hours to even odds on a cool panel, may be infinite
     * @param hotHours  the same on a hot one, not above the cool ones
     * @param warmestC  warmest the panel has been, in °C
     */
    public static double dose(double ageHours, double sunHours, double coolHours, double hotHours, double warmestC) {
        if (ageHours <= 0 || Double.isInfinite(coolHours)) {
            return 0;
        }
        double days = Math.floor(ageHours / DAY);
        double warm = days * sunHours + Math.min(sunHours, ageHours - days * DAY);
        double cool = ageHours - warm;
        return (warm > 0 ? warm / Belief.hoursAt(coolHours, hotHours, warmestC) : 0) + (cool > 0 ? cool / coolHours : 0);
    }

    /**
     * Belief that a mark is there.
     *
     * @param dose  from {@link #dose}
     * @param times how many times the dose of sound clear coat a surface takes to even odds, above 0
     * @param most  share of such deposits that ever mark it, 0 to 1
     */
    public static double belief(double dose, double times, double most) {
        return dose <= 0 ? 0 : most / (1 + Math.pow(times / dose, STEEPNESS));
    }
}
