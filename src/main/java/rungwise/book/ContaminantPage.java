package rungwise.book;

import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.List;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Hours;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.matter.MadeOf;

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
        Sheet sheet = new Sheet().say(one.what() + ".").fact("Also called", String.join(", ", one.alsoCalled()))
                .fact("Holds, fresh", bond(one.bond().fresh()));
        if (one.bond().changes()) {
            sheet.fact("Holds, hardened", bond(one.bond().hardened()));
        }
        one.madeOf().ifPresent(m -> sheet.fact("Lies there", Words.of(one.form().fresh())).fact("Made of, fresh", parts(m.fresh()))
                .fact("Made of, hardened", m.old().equals(m.fresh()) ? "" : parts(m.old())));
        sheet.fact("No work starts", one.holds().orElse(""))
                .fact("Who takes over", links.all(Chapter.METHOD, one.refersTo().stream().toList()));
        one.emergency().ifPresent(e -> sheet.fact("At once", links.to(Chapter.METHOD, e.method()))
                .fact("Helps until", Figures.text(e.untilHours()) + " hours after it landed. " + e.why()));
        sheet.head("Recognise").fact("Look", one.recognise().look()).fact("Feel", one.recognise().feel())
                .fact("Place", one.recognise().place()).fact("Test", one.recognise().test())
                .fact("Look-alikes", links.all(Chapter.CONTAMINANT, one.recognise().lookAlikes()));
        signs(sheet, one);
        sheet.head("Ageing").say(one.ageing()).fact("Hardens", hours(one.hardens()))
                .fact("Marks the surface", hours(one.marks()))
                .fact("Gains with age", links.all(Chapter.METHOD, base.methods().values().stream()
                        .filter(m -> one.chances(m).gainsWithAge()).map(m -> m.id()).toList()));
        sheet.head("Hazards").fact("Hazards", said(one.hazards().isEmpty() ? List.of("none named")
                        : one.hazards().stream().map(Words::of).toList()))
                .fact("Nature", said(one.nature().stream().map(Words::of).toList()));
        sheet.sentences("Protection", new Protection(base).of(one.ppe()));
        ladders.forEach(answer -> ladder.write(sheet, answer));
        sheet.ungroup().table("Chances that differ from its bond class", List.of("Methods", "Fresh", "Hardened", "Why", "Basis"),
                one.overrides().stream().map(o -> List.<DomContent>of(links.all(Chapter.METHOD, o.methods()),
                        text(Words.of(o.fresh())), text(Words.of(o.hardened())), text(o.why()),
                        links.basis(o.basis(), o.sources()))).toList());
        return sheet.head("Where this comes from").fact("Basis", links.basis(one.basis(), one.sources()))
                .page(Chapter.CONTAMINANT.path(one.id()), one.name());
    }

    private void signs(Sheet sheet, Contaminant one) {
        sheet.sentences("Signs that speak for it", base.observations().values().stream()
                .filter(o -> o.pointsTo().contains(one.id())).map(o -> o.says()).toList());
        sheet.sentences("Signs that speak against it", base.observations().values().stream()
                .filter(o -> o.against().contains(one.id())).map(o -> o.says()).toList());
    }

    private String parts(List<MadeOf.Part> parts) {
        return String.join(", ", parts.stream().map(p -> base.matter().components().get(p.component()).name() + " "
                + Figures.text(Math.round(p.share() * 100)) + " % (" + Words.of(p.role()) + ")").toList());
    }

    private String bond(String id) {
        return "by " + base.bondClasses().get(id).holds() + ". " + base.bondClasses().get(id).meaning();
    }

    private static String hours(Hours hours) {
        return hours.isNever() ? "never" : "after " + Figures.text(hours.cool()) + " hours on a cool panel, "
                + Figures.text(hours.hot()) + " on a hot one";
    }

    private static String said(List<String> words) {
        return String.join(", ", words);
    }
}
