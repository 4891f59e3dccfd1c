package rungwise.rules.use;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.common.Sentence;
import rungwise.knowledge.safety.Respirator;
import rungwise.text.Figure;

/**
 * What a method would put into the air of a closed bay, where nobody told where the work is.
 *
 * @param respirator the least that is enough there, or else the strongest made for vapour
 */
public record AiringIfClosed(Airing closed, Optional<Respirator> respirator) {
    public String method() {
        return closed.method();
    }

    public List<Figure> figures() {
        return Figure.all(List.of(Figure.of("untold", "bay"), Figure.of("reckonedAs", "closedBay")), closed.figures());
    }

    public List<Figure> respiratorFigures() {
        return Figure.all(figures(), respirator.map(r -> List.of(Figure.of("respirator", Sentence.within(r.name())))).orElse(List.of()));
    }
}
