package rungwise.book;

import static j2html.TagCreator.h2;

import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Gate;

/** All gates on one page: who opens them, what to get, what happens otherwise. */
final class GatesPage {
    private GatesPage() {
    }

    static Page of(KnowledgeBase base, Links links) {
        Sheet sheet = new Sheet().say("A gate must be open before a method that carries it may start.");
        for (Gate one : base.gates().values()) {
            sheet.add(h2(one.name()).withId(one.id())).fact("Kind", Words.of(one.kind()))
                    .fact("Get or do", one.obtain()).fact("Otherwise", one.otherwise())
                    .fact("Carried by", links.all(Chapter.METHOD, base.methods().values().stream()
                            .filter(m -> m.gates().contains(one.id())).map(m -> m.id()).toList()))
                    .fact("Basis", links.basis(one.basis(), one.sources()));
        }
        return sheet.page("gates.html", "Gates");
    }
}
