package rungwise.rules;

import java.util.Set;
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

    /** Dirt that lies on the surface, or the film it dries to: it is washed off. */
    public boolean isLooseDirt() {
        return contaminant.bond().fresh().equals("loose")
                && Set.of("loose", "surfactant_film").contains(contaminant.bond().hardened());
    }

    /** What a blade tears off with what is beneath it, or drags as grit. */
    public boolean harmsUnderEdge() {
        return contaminant.bond().hardened().equals("resinous")
                || contaminant.bond().hardened().equals("mineral_ionic") && is(Nature.GRITTY);
    }

    /** A liquid spilt within two hours, by our own figure. */
    public boolean isWetYet() {
        return ageKnown && ageHours <= 2 && !is(Nature.DUSTY) && !is(Nature.DRY_FIRST)
                && !contaminant.bond().fresh().equals("loose") && !contaminant.isDamage();
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
