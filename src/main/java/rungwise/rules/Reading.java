package rungwise.rules;

import rungwise.knowledge.Figures;

/** Gauge readings in micrometres: the thinnest and thickest total. */
public record Reading(double lowest, double highest) {
    public String figures() {
        return "total film " + Figures.text(lowest) + "–" + Figures.text(highest) + " µm";
    }
}
