package rungwise.rules;

import rungwise.knowledge.Figures;

/**
 * The panel now.
 *
 * @param measured false where the temperature was worked out from air and sun
 */
public record Panel(double celsius, boolean measured, boolean directSun, double windMs) {
    public String figures() {
        return "panel " + Figures.text(Math.round(celsius)) + " °C" + (measured ? "" : " (worked out)");
    }
}
