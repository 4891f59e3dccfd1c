package rungwise.rules;

import rungwise.knowledge.Figures;

/** Micrometres of clear that may still be taken, refining included. */
public record Budget(double microns, String how) {
    public String figures() {
        return Figures.text(microns) + " µm may be taken (" + how + ")";
    }
}
