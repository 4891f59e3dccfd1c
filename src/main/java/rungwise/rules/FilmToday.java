package rungwise.rules;

import rungwise.knowledge.Figures;

/** What is left of the budget of film after what was tried on this spot. */
public record FilmToday(double leftMicrons, double takenMicrons) {
    public String figures() {
        return Figures.text(takenMicrons) + " µm taken here before, " + Figures.text(leftMicrons) + " µm left";
    }
}
