package rungwise.rules;

import rungwise.knowledge.Figures;
import rungwise.science.HeatIndex;

/**
 * How hot it feels to whoever works.
 *
 * @param measured false where no humidity was given and a muggy day was assumed
 */
public record Warmth(double airC, double humidity, boolean measured, HeatIndex.Band band) {
    public boolean isHot() {
        return band != HeatIndex.Band.NONE;
    }

    public String figures() {
        return "air " + Figures.text(airC) + " °C, humidity " + Math.round(humidity * 100) + " %"
                + (measured ? "" : " assumed") + ", feels like "
                + Math.round(HeatIndex.celsius(airC, humidity)) + " °C";
    }
}
