package rungwise.rules.use;

import java.util.List;
import rungwise.text.Figure;

/**
 * One chosen rung.
 *
 * @param rank   1 for the first
 * @param chance that it takes the deposit off, as now believed
 */
public record Chosen(Use use, int rank, double chance) {
    public String name() {
        return use.name();
    }

    public List<Figure> figures() {
        return use.methodFigures();
    }
}
