package rungwise.book;

import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.List;
import java.util.Optional;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Hours;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.matter.MadeOf;
import rungwise.knowledge.method.Chance;
import rungwise.text.Texts;

/** What is stuck: how it is known, how it ages, what it does to people, and the ladder where it is usually met. */
final class ContaminantPage {
    private final KnowledgeBase base;
    private final Links links;
    private final LadderPart ladder;

    ContaminantPage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
        this.ladder = new LadderPart(base, links);
    }

    Page of(Contaminant one, List<Answer> ladders) {
        Sheet sheet = new Sheet().say(one.what() + ".").fact("also-called", String.join(", ", one.alsoCalled()))
                .fact("holds-fresh", bond(one.bond().fresh()));
        if (one.bond().changes()) {
            sheet.fact("holds-hardened", bond(one.bond().hardened()));
        }
        one.madeOf().ifPresent(m -> sheet.fact("lies-there", Words.of(one.form().fresh())).fact("made-of-fresh", parts(m.fresh()))
                .fact("made-of-hardened", m.old().equals(m.fresh()) ? "" : parts(m.old())));
        sheet.fact("no-work-starts", one.holds().orElse(""))
                .fact("who-takes-over", links.all(Chapter.METHOD, one.refersTo().stream().toList()));
        one.emergency().ifPresent(e -> sheet.fact("at-once", links.to(Chapter.METHOD, e.method()))
                .fact("helps-until", say("contaminant.helps-until", "hours", e.untilHours(), "why", e.why())));
        sheet.head("recognise").fact("look", one.recognise().look()).fact("feel", one.recognise().feel())
                .fact("place", one.recognise().place()).fact("test", one.recognise().test())
                .fact("look-alikes", links.all(Chapter.CONTAMINANT, one.recognise().lookAlikes()));
        signs(sheet, one);
        sheet.head("ageing").say(one.ageing()).fact("hardens", hours(one.hardens()))
                .fact("marks-the-surface", hours(one.marks()))
                .fact("leaves", links.all(Chapter.CONTAMINANT, one.leaves().stream().toList()))
                .fact("gains-with-age", links.all(Chapter.METHOD, base.methods().values().stream()
                        .filter(m -> one.chances(m).gainsWithAge()).map(m -> m.id()).toList()));
        sheet.head("hazards").fact("hazards", said(one.hazards().isEmpty() ? List.of(say("contaminant.no-hazard"))
                        : one.hazards().stream().map(Words::of).toList()))
                .fact("nature", said(one.nature().stream().map(Words::of).toList()));
        sheet.sentences("protection", new Protection(base).of(one.ppe()));
        ladders.forEach(answer -> ladder.write(sheet, answer));
        sheet.ungroup().table("remarks", List.of("methods", "fresh", "hardened", "why", "basis"),
                one.remarks().stream().map(o -> List.<DomContent>of(links.all(Chapter.METHOD, o.methods()),
                        chance(o.fresh()), chance(o.hardened()), text(o.why()),
                        links.basis(o.basis(), o.sources()))).toList());
        return sheet.head("where-this-comes-from").fact("basis", links.basis(one.basis(), one.sources()))
                .page(Chapter.CONTAMINANT.path(one.id()), one.name());
    }

    private static DomContent chance(Optional<Chance> one) {
        return text(one.map(Words::of).orElse(""));
    }

    private void signs(Sheet sheet, Contaminant one) {
        sheet.sentences("signs-that-speak-for", base.observations().values().stream()
                .filter(o -> o.pointsTo().contains(one.id())).map(o -> o.says()).toList());
        sheet.sentences("signs-that-speak-against", base.observations().values().stream()
                .filter(o -> o.against().contains(one.id())).map(o -> o.says()).toList());
    }

    private String parts(List<MadeOf.Part> parts) {
        return String.join(", ", parts.stream().map(p -> base.matter().components().get(p.component()).name() + " "
                + Figures.text(Math.round(p.share() * 100)) + " % (" + Words.of(p.role()) + ")").toList());
    }

    private String bond(String id) {
        return say("contaminant.bond", "holds", base.bondClasses().get(id).holds(), "meaning", base.bondClasses().get(id).meaning());
    }

    private static String hours(Hours hours) {
        return hours.isNever() ? say("contaminant.never") : say("contaminant.hours", "cool", hours.cool(), "hot", hours.hot());
    }

    private static String said(List<String> words) {
        return String.join(", ", words);
    }

    private static String say(String id, Object... named) {
        return Texts.said("book." + id, named);
    }
}
