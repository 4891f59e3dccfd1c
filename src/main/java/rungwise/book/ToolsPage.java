package rungwise.book;

import static j2html.TagCreator.h2;

import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Tool;

/** All tools on one page. */
final class ToolsPage {
    private ToolsPage() {
    }

    static Page of(KnowledgeBase base, Links links) {
        Sheet sheet = new Sheet().say("Hardness runs from 0, air or water, to 5, steel.");
        for (Tool one : base.tools().values()) {
            sheet.add(h2(one.name()).withId(one.id())).fact("Acts as", Words.of(one.kind()))
                    .fact("Hardness", Integer.toString(one.hardness()))
                    .fact("Lights solvent vapour", Words.yes(one.ignites()))
                    .fact("Protection", String.join(" ", new Protection(base).of(one.ppe())))
                    .fact("Risks", String.join(" ", one.risks()))
                    .fact("Used by", links.all(Chapter.METHOD, base.methods().values().stream()
                            .filter(m -> m.tool().equals(one.id())).map(m -> m.id()).toList()))
                    .fact("Basis", links.basis(one.basis(), one.sources()));
        }
        return sheet.page("tools.html", "Tools");
    }
}
