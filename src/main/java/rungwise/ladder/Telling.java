package rungwise.ladder;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.question.Question;

/** What the outcome of a try tells of what lies there. */
public final class Telling {
    private Telling() {
    }

    /** Whether a try tells anything: it was a method on a prepared panel, and harm tells of the surface only. */
    public static boolean tells(Question.Tried tried) {
        return tried.counts() && tried.method().isPresent() && !tried.outcome().equals("harm");
    }

    /** A try on a mark that left a mark changed nothing. */
    static Question.Tried onMark(Question.Tried tried) {
        return tried.baresMark() ? tried.ending("no-change") : tried;
    }

    /** The tries that tell of the deposit; what was tried on the mark beneath it does not. */
    public static Stream<Question.Tried> tried(Question question) {
        return question.tried().stream().limit(question.triesOnDeposit()).filter(Telling::tells);
    }

    /**
     * Probability of the outcome where one try has this chance. Some effect is half as telling as the whole; and no outcome
     * rules anything out for good, as the try, or what was told of it, may be mistaken.
     */
    static double likelihood(Question.Tried tried, double chance, Decisions decisions) {
        return Math.max(decisions.value(DecisionId.TRY_MAY_MISLEAD), switch (tried.outcome()) {
            case "no-change" -> Math.pow(1 - chance, tried.times());
            case "partly" -> Math.pow(chance, decisions.value(DecisionId.PARTLY_TELLS));
            case "cleared", Question.MARKED -> chance;
            default -> 1;
        });
    }

    /** The same for a contaminant, over how hard it may be and what part of it is left. */
    public static double likelihood(Question.Tried tried, Contaminant contaminant, Question question, KnowledgeBase base) {
        return likelihood(List.of(tried), contaminant, question, base);
    }

    /** Of all tries together: how hard it is stays one thing from try to try. */
    static double likelihood(Contaminant contaminant, Question question, KnowledgeBase base) {
        return likelihood(tried(question).toList(), contaminant, question, base);
    }

    private static double likelihood(List<Question.Tried> tries, Contaminant somewhere, Question question, KnowledgeBase base) {
        Contaminant contaminant = somewhere.on(Situation.asked(question, base));
        return Situation.age(question, contaminant, base.assumptions()).mean(likelihood(tries, contaminant, false, base),
                likelihood(tries, contaminant, true, base));
    }

    private static double likelihood(List<Question.Tried> tries, Contaminant contaminant, boolean hardened, KnowledgeBase base) {
        double[] parts = contaminant.shares(hardened);
        for (Question.Tried tried : tries) {
            double[] chances = contaminant.chances(base.methods().get(tried.method().orElseThrow()), hardened);
            for (int i = 0; i < parts.length; i++) {
                parts[i] *= likelihood(contaminant.isMark() ? onMark(tried) : tried, chances[i], base.decisions());
            }
        }
        return DoubleStream.of(parts).sum();
    }
}
