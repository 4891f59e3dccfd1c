package rungwise.book;

import static j2html.TagCreator.each;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.List;
import rungwise.answer.Answer;
import rungwise.answer.LadderAnswer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.text.Texts;

/** The ladder on a reference surface, as part of a page. */
final class LadderPart {
    private final KnowledgeBase base;
    private final Links links;

    LadderPart(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    void write(Sheet sheet, Answer answer) {
        String surface = answer.question().surface().get(0);
        sheet.group("ladder", "surface", base.surfaces().get(surface).name())
                .fact("surface", links.to(Chapter.SURFACE, surface))
                .fact("next", answer.next().text());
        answer.ladder().ifPresent(l -> sheet.fact("taken-to-be", Texts.said("book.belief", "hardened",
                Words.percent(l.belief().hardened()), "marked", Words.percent(l.belief().marked()))));
        answer.hold().ifPresent(h -> sheet.fact("held", h.what()).fact("first", h.doFirst()).fact("until", h.until()));
        around(sheet, "before", answer.before());
        sheet.table("steps", List.of("", "method", "chance", "minutes", "grades", "needed-first", "because"),
                answer.rungs().stream().map(this::rung).toList());
        sheet.table("gentle-but-slow", List.of("method", "why"), answer.alternatives().stream()
                .map(a -> List.of(links.to(Chapter.METHOD, a.method()), text(a.why()))).toList());
        around(sheet, "after", answer.after());
        sheet.table("passed-over", List.of("method", "by", "why"), answer.passedOver().stream()
                .filter(p -> !p.step().equals("pointless"))
                .map(p -> List.of(links.to(Chapter.METHOD, p.method()), text(p.step()),
                        each(links.reasons(p.because()), text(" " + p.why())))).toList());
        barred(sheet, "never", answer.never());
        barred(sheet, "not-now", answer.notNow());
        barred(sheet, "used-up", answer.usedUp());
        answer.ladder().map(LadderAnswer::wayOut).ifPresent(w -> sheet.list("when-the-ladder-ends",
                List.of(each(links.to(Chapter.METHOD, w.method()), text(": " + w.text())))));
    }

    private void barred(Sheet sheet, String title, List<Answer.Barred> barred) {
        sheet.table(title, List.of("method", "because"), barred.stream()
                .map(b -> List.of(links.to(Chapter.METHOD, b.method()), links.reasons(b.because()))).toList());
    }

    private void around(Sheet sheet, String title, List<Answer.Around> steps) {
        sheet.sentences(title, steps.stream().map(Answer.Around::text).toList());
    }

    private List<DomContent> rung(Answer.Rung rung) {
        return List.of(text(Integer.toString(rung.rank())), links.to(Chapter.METHOD, rung.method()),
                text(Words.percent(rung.chance().mean())), text(Figures.text(rung.minutes())),
                text(Texts.said("book.grades-are", "mechanical", rung.severity().mechanical(), "chemical", rung.severity().chemical(),
                        "thermal", rung.severity().thermal(), "film", rung.severity().filmMicrons())),
                Links.listed(rung.gates().stream().map(g -> links.gate(g.id())).toList()),
                links.reasons(rung.because()));
    }
}
