package rungwise.rules.fact;

import java.util.List;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Nature;
import rungwise.text.Figure;

/** The contaminant with what is believed of it; the beliefs are those of an unknown age where none was given. */
public record Deposit(Contaminant contaminant, boolean ageKnown, double ageHours, double hardened, double marked) {
    public boolean is(Nature nature) {
        return contaminant.is(nature);
    }

    public boolean hasHazard(String hazard) {
        return contaminant.hazards().contains(hazard);
    }

    /** Hours within which first aid for the surface still helps; below 0 where there is none. */
    public double emergencyHours() {
        return contaminant.emergency().map(Contaminant.Emergency::untilHours).orElse(-1.0);
    }

    public List<Figure> figures() {
        return List.of(Figure.of("deposit", contaminant.name()),
                ageKnown ? Figure.of("age", ageHours / 24, "days") : Figure.of("untold", "age"));
    }
}
