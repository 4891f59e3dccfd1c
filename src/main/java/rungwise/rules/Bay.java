package rungwise.rules;

import rungwise.knowledge.Figures;

/** A room around the work; absent outdoors. */
public record Bay(double volumeM3, double airChangesPerHour) {
    public String figures() {
        return "bay of " + Figures.text(volumeM3) + " m³ with " + Figures.text(airChangesPerHour)
                + " air changes an hour";
    }
}
