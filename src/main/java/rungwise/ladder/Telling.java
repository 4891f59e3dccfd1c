package rungwise.ladder;

import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Chances;
import rungwise.question.Question;
import rungwise.science.Belief;

/** What the outcome of a try tells of what lies there. */
public final class Telling {
    private Telling() {
    }

    /** Whether a try tells anything: it was a method on a prepared panel, and harm tells of the surface only. */
    public static boolean tells(Question.Tried tried) {
        return tried.counts() && tried.method().isPresent() && !tried.outcome().equals("harm");
    }

    /**
     * Probability of the outcome where one try has this chance. Some effect is half as telling as the whole; and no outcome
     * rules anything out for good, as the try, or what was told of it, may be mistaken.
     */
    static double likelihood(Question.Tried tried, double chance, Decisions decisions) {
        return Math.max(decisions.value(DecisionId.TRY_MAY_MISLEAD), switch (tried.outcome()) {
            case "no-change" -> Math.pow(1 - chance, tried.times());
            case "partly" -> Math.pow(chance, decisions.value(DecisionId.PARTLY_TELLS));
            case "cleared" -> chance;
            default -> 1;
        });
    }

    /** The same for a contaminant, over how hard it may be. */
    public static double likelihood(Question.Tried tried, Contaminant contaminant, Question question, KnowledgeBase base) {
        Chances chances = contaminant.chances(base.methods().get(tried.method().orElseThrow()));
        Belief age = Situation.age(question, contaminant, base.assumptions());
        return age.mean(likelihood(tried, chances.fresh().probability(), base.decisions()), likelihood(tried, chances.hardened().probability(), base.decisions()));
    }

    /** Of all tries together: how hard it is stays one thing from try to try. */
    static double likelihood(Contaminant contaminant, Question question, KnowledgeBase base) {
        double fresh = 1;
        double hardened = 1;
        for (Question.Tried tried : question.tried()) {
            if (tells(tried)) {
                Chances chances = contaminant.chances(base.methods().get(tried.method().orElseThrow()));
                fresh *= likelihood(tried, chances.fresh().probability(), base.decisions());
                hardened *= likelihood(tried, chances.hardened().probability(), base.decisions());
            }
        }
        return Situation.age(question, contaminant, base.assumptions()).mean(fresh, hardened);
    }
}
