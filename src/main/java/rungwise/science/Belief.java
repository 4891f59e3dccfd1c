package rungwise.science;

/**
 * Belief that a deposit has hardened.
 *
 * @param hardened probability from 0 to 1; the rest is fresh
 */
public record Belief(double hardened) {
    /** How sharply belief turns around the hardening time: doubling the age takes even odds to 16 to 1. */
    private static final double STEEPNESS = 4;
    private static final double COOL_C = 25;
    private static final double HOT_C = 45;

    public static final Belief UNKNOWN = new Belief(0.5);

    public Belief {
        if (!(hardened >= 0 && hardened <= 1)) {
            throw new IllegalArgumentException("a belief lies between 0 and 1, not " + hardened);
        }
    }

    public double fresh() {
        return 1 - hardened;
    }

    /**
     * Hours until hardening at a panel temperature: the cool figure up to 25 °C, the hot one from 45 °C, between them
     * a straight line in the logarithm, as rates of reaction and evaporation go (Arrhenius).
     *
     * @param coolHours hours on a cool panel, 0 or more, may be infinite
     * @param hotHours  hours on a hot panel, 0 or more, not above the cool ones
     * @param panelC    warmest the panel has been, in °C
     */
    public static double hoursAt(double coolHours, double hotHours, double panelC) {
        if (Double.isInfinite(coolHours)) {
            return coolHours;
        }
        double share = Math.min(1, Math.max(0, (panelC - COOL_C) / (HOT_C - COOL_C)));
        if (coolHours <= 0 || hotHours <= 0) {
            return share >= 1 ? hotHours : coolHours;
        }
        return Math.exp((1 - share) * Math.log(coolHours) + share * Math.log(hotHours));
    }

    /**
     * Belief by age: even odds at the hardening time, logistic in the logarithm of age.
     *
     * @param ageHours  age, 0 or more
     * @param hardHours hours until hardening, from {@link #hoursAt}
     */
    public static Belief byAge(double ageHours, double hardHours) {
        if (Double.isInfinite(hardHours)) {
            return new Belief(0);
        }
        if (hardHours <= 0) {
            return new Belief(1);
        }
        return new Belief(ageHours <= 0 ? 0 : 1 / (1 + Math.pow(hardHours / ageHours, STEEPNESS)));
    }

    /**
     * Bayes after one correct attempt that changed nothing.
     *
     * @param ifFresh    chance that the method clears a fresh deposit, below 1
     * @param ifHardened chance that it clears a hardened one, below 1
     */
    public Belief afterFailure(double ifFresh, double ifHardened) {
        double stillHardened = hardened * (1 - ifHardened);
        double stillFresh = fresh() * (1 - ifFresh);
        return new Belief(stillHardened / (stillHardened + stillFresh));
    }

    /** Chance over both states. */
    public double mean(double ifFresh, double ifHardened) {
        return fresh() * ifFresh + hardened * ifHardened;
    }
}
