package rungwise.rules.fact;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.words.FinishProtection;
import rungwise.text.Figure;

/** What was said to lie on the paint. */
public record Covering(FinishProtection protection) {
    public Optional<String> treatAs() {
        return protection.treatAs();
    }

    public List<Figure> figures() {
        return List.of(Figure.of("onThePaint", protection.name()));
    }
}
