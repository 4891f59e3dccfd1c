package rungwise.rules;

import java.util.Optional;
import rungwise.knowledge.Exposure;
import rungwise.knowledge.Figures;
import rungwise.knowledge.Respirator;
import rungwise.knowledge.Sentence;

/**
 * A gas that rises from an agent in a bay, with what takes it out of the air again, judged by its kind. Where its amount can
 * be worked out it counts with the vapours too, see {@link Airing}.
 *
 * @param limitPpm   the lowest limit
 * @param respirator the least made for this kind
 * @param maximumPpm the most it may be worn in
 * @param unknown    why how much rises cannot be worked out; empty where it is
 */
public record Fume(String method, String agent, Bay bay, Exposure what, double limitPpm, Respirator respirator,
                   double maximumPpm, Optional<String> unknown) {
    /** From here on the air counts as moving, as for the gate that asks for it. */
    private static final double MOVING_CHANGES = 4;

    public boolean isClosed() {
        return bay.airChangesPerHour() < MOVING_CHANGES;
    }

    /** Whether a cartridge is made for it. */
    public boolean hasCartridge() {
        return respirator.isCartridge();
    }

    public String text() {
        return hasCartridge() ? "Fumes of " + what.inSentence() + ": move the air; otherwise "
                + Sentence.within(respirator.name()) + ", good to " + Figures.text(maximumPpm)
                + " ppm and not where it bites through. A particle mask stops no vapour."
                : "Fumes of " + what.inSentence() + ": move the air, as no cartridge is made for it. Otherwise "
                + Sentence.within(respirator.name()) + ". A particle mask stops no vapour.";
    }

    public String figures() {
        return bay.figures() + "; " + agent + " holds " + what.inSentence() + ", limit " + Figures.text(limitPpm)
                + " ppm, factor " + Figures.text(respirator.factor())
                + unknown.map(why -> "; how much rises cannot be worked out, as " + why + ": judged by its kind").orElse("");
    }
}
