package rungwise.knowledge.matter;

import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;

/** What the words for how well a component is taken, and how far a role reaches, are worth. */
public record Shares(double well, double partly, double slightly, double half, double little, double counts) {
    public static Shares of(Decisions decisions) {
        return new Shares(told(decisions, DecisionId.TAKEN_WELL), told(decisions, DecisionId.TAKEN_PARTLY),
                told(decisions, DecisionId.TAKEN_SLIGHTLY), told(decisions, DecisionId.REACHED_IN_PART),
                told(decisions, DecisionId.REACHED_A_LITTLE), told(decisions, DecisionId.COMPONENT_COUNTS));
    }

    /** One that is missing is a fault of its own, found by the checks of loading. */
    private static double told(Decisions decisions, DecisionId id) {
        return decisions.byId().containsKey(id.id()) ? decisions.value(id) : 0;
    }

    /** How much of a component one correct attempt takes where it reaches it. */
    double taken(Grade grade) {
        return switch (grade) {
            case NOT -> 0;
            case SLIGHTLY -> slightly;
            case PARTLY -> partly;
            case WELL -> well;
        };
    }

    /** How much of that is left on a form. */
    double reached(Reach reach, DepositForm form) {
        return reach.full().contains(form) ? 1 : reach.half().contains(form) ? half : reach.little().contains(form) ? little : 0;
    }
}
