package rungwise.workup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;
import rungwise.science.Solubility;
import rungwise.text.Texts;

/**
 * A chance that somebody stated and that the chemistry contradicts, fresh deposit taken.
 *
 * @param red nearest relative energy difference between the organic part and what the deposit dissolves like
 */
public record ChemistryDoubt(String contaminant, String method, Chance stated, Chance expected, double red) {
    /** All of a base: likely at a distance, or unlikely although it is near and undiluted. */
    public static List<ChemistryDoubt> all(KnowledgeBase known) {
        List<ChemistryDoubt> doubts = new ArrayList<>();
        for (Contaminant contaminant : known.contaminants().values()) {
            for (Method method : known.methods().values()) {
                if (ComputedChances.dissolves(method) && isStated(contaminant, method)) {
                    doubt(contaminant, method, known).ifPresent(doubts::add);
                }
            }
        }
        return doubts;
    }

    static boolean isStated(Contaminant contaminant, Method method) {
        return contaminant.makeupFor(method).map(m -> m.whereReached(method).isPresent()).orElseGet(() -> contaminant.remark(method.id()).isPresent()
                || method.chances().containsKey(contaminant.bond().fresh()));
    }

    /** Chemistry knows nothing of how a deposit lies: of what it is made of only what is taken where it is reached is held against it. */
    static Chances stated(Contaminant contaminant, Method method) {
        return contaminant.makeupFor(method).flatMap(m -> m.whereReached(method))
                .orElseGet(() -> contaminant.chances(method));
    }

    private static Optional<ChemistryDoubt> doubt(Contaminant contaminant, Method method, KnowledgeBase known) {
        return ComputedChances.estimate(contaminant, contaminant.bond().fresh(), method, known).flatMap(estimate -> {
            Chance stated = stated(contaminant, method).fresh();
            Chance expected = estimate.chances().fresh();
            double red = estimate.red().low();
            Solubility.Band band = Solubility.band(red);
            boolean distant = band == Solubility.Band.PASSES && stated.compareTo(Chance.L) >= 0;
            boolean near = band == Solubility.Band.DISSOLVES && expected.ordinal() - stated.ordinal()
                    > known.decisions().value(DecisionId.CHEMISTRY_BEARS_OUT);
            return distant || near ? Optional.of(new ChemistryDoubt(contaminant.id(), method.id(), stated, expected, red))
                    : Optional.empty();
        });
    }

    /** As a sentence. */
    public String words() {
        return Texts.said("chemistry.doubt", "method", method, "stated", stated, "red", red, "expected", expected);
    }
}
