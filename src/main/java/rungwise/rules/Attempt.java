package rungwise.rules;

import java.util.List;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Reactive;
import rungwise.text.Figure;

/**
 * Something tried before, with an agent it brought to the spot; a try that brought several makes several.
 *
 * @param told false where nobody knows what was used: its agent then holds whatever could react
 */
public record Attempt(String method, String family, Agent agent, String outcome, int times, double contactMinutes,
                      double hoursAgo, boolean signs, boolean counts, boolean told) {
    /** Whether something nobody can name may still be there. */
    public boolean leftTheUntold() {
        return !told && hoursAgo < 24;
    }

    public boolean isHarm() {
        return outcome.equals("harm");
    }

    public boolean leftBleach() {
        return told && agent.holds(Reactive.HYPOCHLORITE) && hoursAgo < 24;
    }

    /** Whether it left something that gives off gas with bleach. */
    public boolean leftWhatBleachMeets() {
        return told && hoursAgo < 24 && (agent.holds(Reactive.ACID) || agent.holds(Reactive.THIOL)
                || agent.holds(Reactive.AMMONIA) || agent.holds(Reactive.PEROXIDE) || agent.holds(Reactive.QUAT)
                || agent.isSolvent());
    }

    public List<Figure> figures() {
        return List.of(Figure.of("tried", method), Figure.of("times", times), Figure.of("outcome", outcome));
    }
}
