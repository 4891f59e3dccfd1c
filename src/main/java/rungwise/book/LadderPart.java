package rungwise.book;

import static j2html.TagCreator.each;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import java.util.List;
import rungwise.answer.Answer;
import rungwise.answer.LadderAnswer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;

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
        sheet.group("Ladder, aged, on: " + base.surfaces().get(surface).name())
                .fact("Surface", links.to(Chapter.SURFACE, surface))
                .fact("Next", answer.next().text());
        answer.ladder().ifPresent(l -> sheet.fact("Taken to be", Words.percent(l.belief().hardened()) + " likely hardened, "
                + Words.percent(l.belief().marked()) + " likely to have marked the surface"));
        answer.hold().ifPresent(h -> sheet.fact("Held", h.what()).fact("First", h.doFirst()).fact("Until", h.until()));
        around(sheet, "Before", answer.before());
        sheet.table("Steps", List.of("", "Method", "Chance", "Minutes", "Grades", "Needed first", "Because"),
                answer.rungs().stream().map(this::rung).toList());
        sheet.table("Gentle but slow", List.of("Method", "Why"), answer.alternatives().stream()
                .map(a -> List.of(links.to(Chapter.METHOD, a.method()), text(a.why()))).toList());
        around(sheet, "After", answer.after());
        sheet.table("Passed over", List.of("Method", "By", "Why"), answer.passedOver().stream()
                .filter(p -> !p.step().equals("pointless"))
                .map(p -> List.of(links.to(Chapter.METHOD, p.method()), text(p.step()),
                        each(links.reasons(p.because()), text(" " + p.why())))).toList());
        barred(sheet, "Never", answer.never());
        barred(sheet, "Not now", answer.notNow());
        barred(sheet, "Used up", answer.usedUp());
        answer.ladder().map(LadderAnswer::wayOut).ifPresent(w -> sheet.list("When the ladder ends",
                List.of(each(links.to(Chapter.METHOD, w.method()), text(": " + w.text())))));
    }

    private void barred(Sheet sheet, String title, List<Answer.Barred> barred) {
        sheet.table(title, List.of("Method", "Because"), barred.stream()
                .map(b -> List.of(links.to(Chapter.METHOD, b.method()), links.reasons(b.because()))).toList());
    }

    private void around(Sheet sheet, String title, List<Answer.Around> steps) {
        sheet.sentences(title, steps.stream().map(Answer.Around::text).toList());
    }

    private List<DomContent> rung(Answer.Rung rung) {
        return List.of(text(Integer.toString(rung.rank())), links.to(Chapter.METHOD, rung.method()),
                text(Words.percent(rung.chance().mean())), text(Figures.text(rung.minutes())),
                text("mechanical " + rung.severity().mechanical() + ", chemical " + rung.severity().chemical()
                        + ", thermal " + rung.severity().thermal() + ", film "
                        + Figures.text(rung.severity().filmMicrons()) + " µm"),
                Links.listed(rung.gates().stream().map(g -> links.gate(g.id())).toList()),
                links.reasons(rung.because()));
    }
}
