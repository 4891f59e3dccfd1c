package rungwise.rules.use;

import java.util.List;
import rungwise.knowledge.safety.Respirator;
import rungwise.text.Figure;

/** A gas that would gather in a closed bay, where nobody told where the work is. */
public record FumeIfClosed(Fume closed) {
    public String method() {
        return closed.method();
    }

    public Respirator respirator() {
        return closed.respirator();
    }

    public List<Figure> figures() {
        return Figure.all(List.of(Figure.of("untold", "bay"), Figure.of("reckonedAs", "closedBay")), closed.figures());
    }
}
