package rungwise.rules.fact;

import java.util.List;
import rungwise.text.Figure;

/**
 * Micrometres of clear that may still be taken, refining included.
 *
 * @param by what it was reckoned by: forLife where the clear alone was read, else aVisit
 */
public record Budget(double microns, String by) {
    public List<Figure> figures() {
        return List.of(Figure.of("budget", microns, "µm"), Figure.of("budgetBy", by));
    }
}
