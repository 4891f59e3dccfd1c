package rungwise.rules;

import rungwise.knowledge.Contaminant;
import rungwise.knowledge.Figures;
import rungwise.knowledge.Nature;

/** The contaminant with what is believed of it; the beliefs are those of an unknown age where none was given. */
public record Deposit(Contaminant contaminant, boolean ageKnown, double ageHours, double hardened, double marked) {
    public boolean is(Nature nature) {
        return contaminant.is(nature);
    }

    public boolean hasHazard(String hazard) {
        return contaminant.hazards().contains(hazard);
    }

    public boolean withinEmergency() {
        return contaminant.emergency().isPresent()
                && (!ageKnown || ageHours <= contaminant.emergency().get().untilHours());
    }

    /** First aid for the surface is given whatever the weather, the shelf and the count of tries. */
    public boolean firstAid(String method) {
        return withinEmergency() && (method.equals("blot_absorb")
                || contaminant.emergency().get().method().equals(method));
    }

    public String figures() {
        return contaminant.name() + ", " + (ageKnown ? Figures.text(ageHours / 24) + " days old" : "age unknown");
    }
}
