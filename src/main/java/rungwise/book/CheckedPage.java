package rungwise.book;

import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.pre;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Waiver;
import rungwise.lint.CheckPage;
import rungwise.text.Texts;

/** What a check looks for, a sample of either kind, and what stands all the same. */
final class CheckedPage {
    private final KnowledgeBase base;
    private final Links links;

    CheckedPage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    Page of(CheckPage one) {
        return new Sheet().say(one.says()).fact("why", one.why())
                .add(h2(say("wrong"))).add(pre(one.wrong().strip())).add(h2(say("right"))).add(pre(one.right().strip()))
                .list("what-stands-and-why", base.waivers().stream().filter(w -> w.check().equals(one.id()))
                        .map(this::stands).toList())
                .page(Chapter.CHECK.path(one.id()), say("check", "id", one.id()));
    }

    private DomContent stands(Waiver waiver) {
        return each(links.named(waiver.entry()), text(waiver.about().map(about -> " " + say("waived-with", "about", Words.of(about))).orElse("")
                + ": " + waiver.reason() + " (" + waiver.date() + ")"));
    }

    private static String say(String id, Object... named) {
        return Texts.said("book." + id, named);
    }
}
