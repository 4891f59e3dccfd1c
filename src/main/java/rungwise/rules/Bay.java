package rungwise.rules;

import rungwise.knowledge.Figures;

/** A room around the work; absent outdoors. */
public record Bay(double volumeM3, double airChangesPerHour) {
    /** A shut garage for one vehicle, for where nobody told where the work is; common practice. */
    public static final Bay CLOSED = new Bay(60, 0.5);

    public String figures() {
        return "bay of " + Figures.text(volumeM3) + " m³ with " + Figures.text(airChangesPerHour)
                + " air changes an hour";
    }
}
