package rungwise.book;

import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.Arrays;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.surface.Surface;

/** What a surface tolerates, what is never done to it, and who takes over. */
final class SurfacePage {
    private final KnowledgeBase base;
    private final Links links;

    SurfacePage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    Page of(Surface one) {
        Sheet sheet = new Sheet().say(one.description()).fact("Also called", String.join(", ", one.alsoCalled()))
                .fact("How to tell it", one.tell())
                .fact("Made as", Words.of(one.kind()))
                .fact("pH borne", one.acidity() + " (short, cool, rinsed contact)")
                .fact("Warmest", Figures.text(one.maxC()) + " °C on the surface")
                .fact("Mechanical grade", "up to " + one.mechanical().free() + " without asking, up to "
                        + one.mechanical().agreed() + " with the customer's agreement")
                .fact("Hardest tool", one.hardness() + " on the scale from 0, air or water, to 5, steel")
                .fact("Water pressure", "up to " + Figures.text(one.maxPressureBar()) + " bar at the nozzle")
                .fact("Traits", String.join(", ", one.traits().stream().map(Words::of).toList()))
                .fact("Film", one.film())
                .fact("Made of", String.join(", ", one.polymers().stream().map(p -> base.solutes().get(p.sphere()).name()
                        + (p.proxy() ? " (stands in)" : "")).toList()))
                .table("Solvents", List.of("Solvent", "Verdict", "Up to, % by volume", "Why", "Basis"),
                        Arrays.stream(SolventColumn.values()).map(c -> row(one, c)).toList())
                .sentences("Never", one.never()).sentences("Cautions", one.cautions());
        return sheet.head("When the ladder ends").fact("Who takes over", links.to(Chapter.METHOD, one.wayOut()))
                .fact("Basis", links.basis(one.basis(), one.sources()))
                .page(Chapter.SURFACE.path(one.id()), one.name());
    }

    private List<DomContent> row(Surface one, SolventColumn column) {
        return List.of(text(Words.of(column)), text(Words.of(one.limit(column).verdict())),
                text(Figures.text(one.limit(column).maxPercent())), text(one.limit(column).why()),
                links.basis(one.basisOf(column), one.limit(column).sources()));
    }
}
