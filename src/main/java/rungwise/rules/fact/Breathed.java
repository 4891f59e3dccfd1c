package rungwise.rules.fact;

import java.util.List;
import rungwise.knowledge.common.Sentence;
import rungwise.text.Figure;

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

    public List<Figure> figures() {
        return List.of(Figure.of("vapour", Sentence.within(name)), Figure.against("nearHands", rounded(ppm), "ppm", rounded(limitPpm)));
    }

    private static double rounded(double value) {
        return value >= 10 ? Math.round(value) : Math.round(value * 10) / 10.0;
    }
}
