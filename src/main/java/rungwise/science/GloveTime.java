package rungwise.science;

import java.util.OptionalDouble;

/**
 * How long a glove holds. Permeation charts (EN ISO 374-1, ASTM F739) differ between makers and even between gloves of
 * one kind, 30 to 300 minutes for the same solvent (Mickelsen and Hall, 1987): the shortest counts.
 */
public final class GloveTime {
    /** Molar volume in cm³/mol below which a solvent slips between chains whatever its affinity says. */
    private static final double SMALL_MOLECULE = 80;

    private GloveTime() {
    }

    /**
     * Minutes to count with.
     *
     * @param chartMinutes every published time for this substance and glove, at least one
     */
    public static double shortest(double... chartMinutes) {
        return java.util.Arrays.stream(chartMinutes).min()
                .orElseThrow(() -> new IllegalArgumentException("no chart says how long this glove holds"));
    }

    /**
     * With a time predicted from a solubility sphere. Spheres are blind to small alcohols, which go through gloves
     * that they hardly swell: for those a sphere alone says nothing, and nowhere does it lengthen a chart's time.
     *
     * @param chart          shortest charted time, if any
     * @param sphere         predicted time, if any
     * @param alcohol        whether the substance is an alcohol
     * @param molarVolumeCm3 in cm³/mol
     * @return minutes, or empty where nothing can be relied on
     */
    public static OptionalDouble reliable(OptionalDouble chart, OptionalDouble sphere, boolean alcohol,
                                          double molarVolumeCm3) {
        boolean blind = alcohol && molarVolumeCm3 < SMALL_MOLECULE;
        if (sphere.isEmpty() || blind) {
            return chart;
        }
        return OptionalDouble.of(Math.min(sphere.getAsDouble(), chart.orElse(Double.POSITIVE_INFINITY)));
    }

    /** Whether a glove holds for the whole contact, put on fresh. */
    public static boolean holds(double breakthroughMinutes, double contactMinutes) {
        return contactMinutes < breakthroughMinutes;
    }
}
