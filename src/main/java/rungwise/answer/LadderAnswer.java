package rungwise.answer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwise.question.FactUse;
import rungwise.question.Question;

/**
 * A ladder: what is worth trying, what surrounds it, what was left out and why, and the next step.
 *
 * @param mark   what shows where the deposit came off; the ladder is that of the mark
 * @param never  barred by the surface, the deposit, or what the customer refused
 * @param notNow barred today: something opens it
 * @param usedUp had its tries or its contact on this spot
 */
public record LadderAnswer(String revision, Question question, FactUse facts, Optional<Mark> mark, List<Assumed> assumed, State belief,
                           List<Around> before, List<Rung> rungs, List<Alternative> alternatives, List<PassedOver> passedOver, List<Barred> never,
                           List<Barred> notNow, List<Barred> usedUp, List<Neighbour> neighbours, List<Around> after, WayOut wayOut,
                           Next next, Expected expected, List<Advice> advice, Map<String, Explained> reasons) implements Answer {
    LadderAnswer with(Map<String, Explained> collected) {
        return new LadderAnswer(revision, question, facts, mark, assumed, belief, before, rungs, alternatives, passedOver, never, notNow, usedUp,
                neighbours, after, wayOut, next, expected, advice, collected);
    }
}
