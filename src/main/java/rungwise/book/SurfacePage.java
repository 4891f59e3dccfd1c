package rungwise.book;

import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.Arrays;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.SolventColumn;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.surface.Surface;
import rungwise.text.Texts;

/** What a surface tolerates, what is never done to it, and who takes over. */
final class SurfacePage {
    private final KnowledgeBase base;
    private final Links links;

    SurfacePage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    Page of(Surface one) {
        Sheet sheet = new Sheet().say(one.description()).fact("also-called", String.join(", ", one.alsoCalled()))
                .fact("how-to-tell-it", one.tell())
                .fact("made-as", Words.of(one.kind()))
                .fact("ph-borne", say("surface.acidity", "acidity", one.acidity()))
                .fact("warmest", say("surface.warmest", "celsius", one.maxC()))
                .fact("mechanical-grade", say("surface.mechanical", "free", one.mechanical().free(), "agreed", one.mechanical().agreed()))
                .fact("hardest-tool", say("surface.hardness", "hardness", one.hardness()))
                .fact("water-pressure", say("surface.pressure", "bar", one.maxPressureBar()))
                .fact("traits", String.join(", ", one.traits().stream().map(Words::of).toList()))
                .fact("film", one.film())
                .fact("made-of", String.join(", ", one.polymers().stream().map(p -> p.proxy() ? say("surface.stands-in", "name",
                        base.solutes().get(p.sphere()).name()) : base.solutes().get(p.sphere()).name()).toList()))
                .table("solvents", List.of("solvent", "verdict", "up-to-percent-by", "why", "basis"),
                        Arrays.stream(SolventColumn.values()).map(c -> row(one, c)).toList())
                .sentences("never", one.never()).sentences("cautions", one.cautions());
        return sheet.head("when-the-ladder-ends").fact("who-takes-over", links.to(Chapter.METHOD, one.wayOut()))
                .fact("basis", links.basis(one.basis(), one.sources()))
                .page(Chapter.SURFACE.path(one.id()), one.name());
    }

    private List<DomContent> row(Surface one, SolventColumn column) {
        return List.of(text(Words.of(column)), text(Words.of(one.limit(column).verdict())),
                text(Figures.text(one.limit(column).maxPercent())), text(one.limit(column).why()),
                links.basis(one.basisOf(column), one.limit(column).sources()));
    }

    private static String say(String id, Object... named) {
        return Texts.said("book." + id, named);
    }
}
