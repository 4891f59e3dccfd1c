package rungwise.rules;

import rungwise.knowledge.Figures;
import rungwise.knowledge.SurfaceKind;
import rungwise.knowledge.Trait;

/**
 * A method that might be offered today.
 *
 * @param atHand         agent and tool are on the shelf
 * @param filmWithRefining micrometres that it and its obligatory refining take
 * @param contactLeft    minutes of contact its family may still have on this spot
 * @param triesLeft      correct attempts still allowed
 */
public record Candidate(Use use, boolean atHand, double filmWithRefining, double contactLeft, int triesLeft) {
    public String name() {
        return use.method().id();
    }

    public boolean tooHot(double celsius) {
        return use.method().window().filter(w -> celsius > w.to()).isPresent();
    }

    public boolean tooCold(double celsius) {
        return use.method().window().filter(w -> celsius < w.from()).isPresent();
    }

    public String windowFigures() {
        return use.method().window().map(w -> "works from " + Figures.text(w.from()) + " to " + Figures.text(w.to())
                + " °C").orElse("");
    }

    /** Takes clear that has to be counted; gel coat alone is some ten times as thick and no gauge reads it. */
    public boolean isOnFilm() {
        return filmWithRefining > 0 && use.on(Trait.LOSES_FILM) && use.surface().kind() != SurfaceKind.GEL_COAT;
    }

    public String filmFigures() {
        return "takes " + Figures.text(filmWithRefining) + " µm with its refining";
    }

    public String filmText(double budgetMicrons) {
        return "It takes " + Figures.text(filmWithRefining) + " µm with its refining, of "
                + Figures.text(budgetMicrons) + " µm that may go.";
    }

    /** Level number a worker needs: L1 = 1 … L4 = 4, outside trades above that. */
    public int levelNeeded() {
        return use.method().level().startsWith("L") ? use.method().level().charAt(1) - '0' : 5;
    }
}
