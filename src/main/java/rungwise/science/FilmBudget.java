package rungwise.science;

/** Clear coat that may still be taken. */
public final class FilmBudget {
    /** On a reading of the total only, micrometres a visit: trade practice below every published limit. */
    public static final double PER_VISIT_MICRONS = 3;
    /** Smallest published limit of a vehicle maker for clear removed over the life: 0.3 mil. */
    public static final double FOR_LIFE_MICRONS = 7.5;
    /** Share of the clear that may go. */
    public static final double SHARE_OF_CLEAR = 0.25;
    /** How far a gauge may be out, either way: recalled for eddy-current gauges, not looked up. */
    public static final double GAUGE_ERROR_MICRONS = 3;

    private FilmBudget() {
    }

    /**
     * With a reading of the clear alone: the smaller of 7.5 µm and a quarter of the clear.
     *
     * @param clearMicrons clear coat, 0 or more
     */
    public static double ofClear(double clearMicrons) {
        return Math.min(FOR_LIFE_MICRONS, SHARE_OF_CLEAR * clearMicrons);
    }

    /**
     * The same with the gauge at its worst: a quarter of the least clear that the reading allows.
     *
     * @param readMicrons what the gauge said, 0 or more
     */
    public static double ofReading(double readMicrons) {
        return ofClear(Math.max(0, readMicrons - GAUGE_ERROR_MICRONS));
    }

    /**
     * What is left of a budget after past work.
     *
     * @param budget  micrometres
     * @param removed micrometres taken before, 0 or more each
     * @return 0 or more
     */
    public static double left(double budget, double... removed) {
        return Math.max(0, budget - java.util.Arrays.stream(removed).sum());
    }

    /**
     * Of a clear coat known before any work: what may go by the strictest limit, less what went.
     *
     * @param startMicrons clear as it left the factory or was first read
     * @param removed      micrometres taken since
     */
    public static double leftForLife(double startMicrons, double... removed) {
        return left(ofReading(startMicrons), removed);
    }

    /**
     * What a rung uses up: its own film and that of the refining it cannot do without.
     *
     * @param ownMicrons      0 or more
     * @param refiningMicrons of each finer step that must follow
     */
    public static double used(double ownMicrons, double... refiningMicrons) {
        return ownMicrons + java.util.Arrays.stream(refiningMicrons).sum();
    }
}
