package rungwise.rules;

import rungwise.knowledge.Figures;
import rungwise.knowledge.Sentence;

/**
 * One substance in the air near the hands.
 *
 * @param ppm      over at least a quarter of an hour
 * @param limitPpm the lowest limit over a shift
 */
public record Breathed(String name, double ppm, double limitPpm) {
    /** Its part of the limit of the mixture. */
    public double share() {
        return ppm / limitPpm;
    }

    String figures() {
        return Sentence.within(name) + " " + rounded(ppm) + " of "
                + rounded(limitPpm) + " ppm";
    }

    private static String rounded(double value) {
        return Figures.text(value >= 10 ? Math.round(value) : Math.round(value * 10) / 10.0);
    }
}
