package rungwise.book;

import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.pre;
import static j2html.TagCreator.text;

import j2html.tags.DomContent;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Waiver;
import rungwise.lint.CheckPage;

/** What a check looks for, a sample of either kind, and what stands all the same. */
final class CheckedPage {
    private final KnowledgeBase base;
    private final Links links;

    CheckedPage(KnowledgeBase base, Links links) {
        this.base = base;
        this.links = links;
    }

    Page of(CheckPage one) {
        return new Sheet().say(one.says()).fact("Why", one.why())
                .add(h2("Wrong")).add(pre(one.wrong().strip())).add(h2("Right")).add(pre(one.right().strip()))
                .list("What stands, and why", base.waivers().stream().filter(w -> w.check().equals(one.id()))
                        .map(this::stands).toList())
                .page(Chapter.CHECK.path(one.id()), "Check " + one.id());
    }

    private DomContent stands(Waiver waiver) {
        return each(links.named(waiver.entry()), text(waiver.about().map(about -> " with " + Words.of(about)).orElse("") + ": "
                + waiver.reason() + " (" + waiver.date() + ")"));
    }
}
