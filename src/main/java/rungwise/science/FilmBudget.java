package rungwise.science;

/** Clear coat that may still be taken. */
public final class FilmBudget {
    /** On a reading of the total only, micrometres a visit: trade practice below every published limit. */
    public static final double PER_VISIT_MICRONS = 3;
    /** Smallest published limit of a vehicle maker for clear removed over the life: 0.3 mil. */
    public static final double FOR_LIFE_MICRONS = 7.5;
    /** Share of the clear that may go. */
    public static final double SHARE_OF_CLEAR = 0.25;

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
}
