package rungwise.ladder;

import rungwise.knowledge.common.Figures;
import rungwise.knowledge.method.Chances;
import rungwise.text.Texts;

/**
 * How likely a method is to clear a deposit, as the ladder uses it.
 *
 * @param ifFresh      chance that one correct attempt clears a fresh deposit
 * @param ifHardened   the same for a hardened one
 * @param triesFresh   recorded tries behind the first figure, each weighed by the belief in that state
 * @param triesHardened recorded tries behind the second
 * @param learned      whether a log moved either of them; else both are priors
 */
public record Likely(double ifFresh, double ifHardened, double triesFresh, double triesHardened, boolean learned) {

    /** What knowledge says. */
    public static Likely prior(Chances chances) {
        return new Likely(chances.fresh().probability(), chances.hardened().probability(), 0, 0, false);
    }

    /** How a log moved these figures from what knowledge says, in words. */
    public String movedFrom(Chances prior) {
        return Texts.said("ladder.learned", "freshPrior", prior.fresh().probability(), "fresh", Figures.thousandths(ifFresh),
                "freshTries", Figures.thousandths(triesFresh), "hardenedPrior", prior.hardened().probability(), "hardened",
                Figures.thousandths(ifHardened), "hardenedTries", Figures.thousandths(triesHardened));
    }

    /** What the figures rest on, where knowledge states a chance or chemistry filled it in. */
    public String basis(boolean computed) {
        return learned ? "learned" : computed ? "computed" : "prior";
    }
}
