package rungwise.rules;

import rungwise.knowledge.Figures;

/** How much of it there is; absent where nobody said. */
public record Spread(double areaM2) {
    public String figures() {
        return "about " + Figures.text(Math.round(areaM2 * 1000) / 1000.0) + " m²";
    }
}
