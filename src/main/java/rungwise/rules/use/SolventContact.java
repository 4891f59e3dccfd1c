package rungwise.rules.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.surface.Limit;
import rungwise.text.Figure;
import rungwise.text.Texts;

/** An organic component of 5 % or more meeting a surface, with what that surface says to its kind. */
public record SolventContact(Use use, SolventColumn column, double percent, Limit limit) {
    public List<Figure> figures() {
        List<Figure> figures = new ArrayList<>(use.figures());
        figures.add(Figure.of("solvent", column.name().toLowerCase(Locale.ROOT).replace("_", Texts.said("list.or"))));
        figures.add(limit.maxPercent() < 100 ? Figure.against("share", percent, "%", limit.maxPercent())
                : Figure.of("share", percent, "%"));
        figures.add(Figure.of("verdict", limit.verdict().name().toLowerCase(Locale.ROOT)));
        figures.add(Figure.of("why", limit.why()));
        return List.copyOf(figures);
    }
}
