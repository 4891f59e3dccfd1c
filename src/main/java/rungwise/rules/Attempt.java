package rungwise.rules;

import java.util.List;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Reactive;
import rungwise.text.Figure;

/** Something tried before, with the agent it brought to the spot. */
public record Attempt(String method, String family, Agent agent, String outcome, int times, double contactMinutes,
                      double hoursAgo, boolean signs, boolean counts) {
    public boolean isHarm() {
        return outcome.equals("harm");
    }

    public boolean leftBleach() {
        return agent.holds(Reactive.HYPOCHLORITE) && hoursAgo < 24;
    }

    /** Whether it left something that gives off gas with bleach. */
    public boolean leftWhatBleachMeets() {
        return hoursAgo < 24 && (agent.holds(Reactive.ACID) || agent.holds(Reactive.THIOL)
                || agent.holds(Reactive.AMMONIA) || agent.holds(Reactive.PEROXIDE) || agent.holds(Reactive.QUAT)
                || agent.isSolvent());
    }

    public List<Figure> figures() {
        return List.of(Figure.of("tried", method), Figure.of("times", times), Figure.of("outcome", outcome));
    }
}
