package rungwise.book;

import static j2html.TagCreator.h2;

import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Gate;
import rungwise.text.Texts;

/** All gates on one page: who opens them, what to get, what happens otherwise. */
final class GatesPage {
    private GatesPage() {
    }

    static Page of(KnowledgeBase base, Links links) {
        Sheet sheet = new Sheet().say(Texts.said("book.gates-page"));
        for (Gate one : base.gates().values()) {
            sheet.add(h2(one.name()).withId(one.id())).fact("kind", Words.of(one.kind()))
                    .fact("get-or-do", one.obtain()).fact("otherwise", one.otherwise())
                    .fact("carried-by", links.all(Chapter.METHOD, base.methods().values().stream()
                            .filter(m -> m.gates().contains(one.id())).map(m -> m.id()).toList()))
                    .fact("basis", links.basis(one.basis(), one.sources()));
        }
        return sheet.page("gates.html", Texts.said("book.gates"));
    }
}
