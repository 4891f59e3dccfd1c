package rungwise.rules.fact;

import java.util.List;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.text.Figure;

/** A deposit came off, and a mark shows where it lay. */
public record Bared(Contaminant deposit, Contaminant mark) {
    public List<Figure> figures() {
        return List.of(Figure.of("deposit", deposit.name()), Figure.of("mark", mark.name()));
    }
}
