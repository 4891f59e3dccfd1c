package rungwise.rules.fact;

import java.util.List;
import rungwise.knowledge.deposit.Observation;
import rungwise.text.Figure;

/** An observation that was made on this spot. */
public record Seen(Observation observation) {
    public List<Figure> figures() {
        return List.of(Figure.of("seen", observation.says()));
    }
}
