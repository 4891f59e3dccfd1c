package rungwise.answer;

import java.util.List;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.ladder.ChanceTable;
import rungwise.text.Texts;

/** A chance as it may honestly be told: a word while somebody recalled it, a count once it was tried here, a number after many tries. */
public final class ChanceWords {
    private static final List<DecisionId> FROM = List.of(DecisionId.POINTLESS, DecisionId.SOMETIMES_FROM, DecisionId.OFTEN_FROM, DecisionId.USUALLY_FROM);
    private static final List<String> WORDS = List.of("hardly", "seldom", "sometimes", "often", "usually");
    private static final int MOST = 5;

    private final Decisions decisions;

    public ChanceWords(Decisions decisions) {
        this.decisions = decisions;
    }

    /** From 1 to 5. */
    public int bars(double chance) {
        return 1 + (int) FROM.stream().filter(from -> chance >= decisions.value(from)).count();
    }

    public String word(double chance) {
        return Texts.said("chance." + WORDS.get(bars(chance) - 1));
    }

    /**
     * Five bars, of which as many are full.
     *
     * @param plain in ASCII
     */
    public static String drawn(int bars, boolean plain) {
        return (plain ? "#" : "▮").repeat(bars) + (plain ? "-" : "▯").repeat(MOST - bars);
    }

    Answer.Odds odds(double chance, double half, String basis, ChanceTable.Count here) {
        String text = here.tries() < decisions.value(DecisionId.COUNTED_FROM)
                ? Texts.said("chance.estimate." + basis, "word", word(chance), "tries", here.tries())
                : here.tries() < decisions.value(DecisionId.NUMBERED_FROM)
                ? Texts.said("chance.count", "word", word(chance), "cleared", here.cleared(), "tries", here.tries())
                : Texts.said("chance.number", "percent", Math.round(100 * chance), "cleared", here.cleared(), "tries", here.tries());
        return new Answer.Odds(Figures.thousandths(chance), Figures.thousandths(Math.max(0, chance - half)),
                Figures.thousandths(Math.min(1, chance + half)), basis, word(chance), bars(chance), (int) here.tries(), (int) here.cleared(), text);
    }
}
