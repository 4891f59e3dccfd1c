package rungwise.rules;

import rungwise.knowledge.Agent;
import rungwise.knowledge.Reactive;

/** Something tried before, with the agent it brought to the spot. */
public record Attempt(String method, String family, Agent agent, String outcome, int times, double contactMinutes,
                      double hoursAgo, boolean signs) {
    public boolean isHarm() {
        return outcome.equals("harm");
    }

    public boolean leftBleach() {
        return agent.holds(Reactive.HYPOCHLORITE) && hoursAgo < 24;
    }

    public String figures() {
        return method + " tried " + times + (times == 1 ? " time, " : " times, ") + outcome;
    }
}
