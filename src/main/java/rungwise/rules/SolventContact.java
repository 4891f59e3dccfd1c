package rungwise.rules;

import java.util.Locale;
import rungwise.knowledge.Figures;
import rungwise.knowledge.Limit;
import rungwise.knowledge.SolventColumn;

/** An organic component of 5 % or more meeting a surface, with what that surface says to its kind. */
public record SolventContact(Use use, SolventColumn column, double percent, Limit limit) {
    public boolean forbidden() {
        return limit.verdict().forbids();
    }

    public boolean tooStrong() {
        return !forbidden() && percent > limit.maxPercent();
    }

    public String figures() {
        return Figures.text(percent) + " % " + column.name().toLowerCase(Locale.ROOT).replace("_", " or ") + " on "
                + use.surface().name() + ": " + limit.verdict().name().toLowerCase(Locale.ROOT)
                + (limit.maxPercent() < 100 ? " up to " + Figures.text(limit.maxPercent()) + " %" : "") + ". "
                + limit.why();
    }
}
