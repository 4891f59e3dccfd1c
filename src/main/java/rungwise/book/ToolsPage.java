package rungwise.book;

import static j2html.TagCreator.h2;

import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Tool;
import rungwise.text.Texts;

/** All tools on one page. */
final class ToolsPage {
    private ToolsPage() {
    }

    static Page of(KnowledgeBase base, Links links) {
        Sheet sheet = new Sheet().say(Texts.said("book.tools-page"));
        for (Tool one : base.tools().values()) {
            sheet.add(h2(one.name()).withId(one.id())).fact("acts-as", Words.of(one.kind()))
                    .fact("hardness", Integer.toString(one.hardness()))
                    .fact("lights-solvent-vapour", Words.yes(one.ignites()))
                    .fact("protection", String.join(" ", new Protection(base).of(one.ppe())))
                    .fact("risks", String.join(" ", one.risks()))
                    .fact("used-by", links.all(Chapter.METHOD, base.methods().values().stream()
                            .filter(m -> m.tool().equals(one.id())).map(m -> m.id()).toList()))
                    .fact("basis", links.basis(one.basis(), one.sources()));
        }
        return sheet.page("tools.html", Texts.said("book.tools"));
    }
}
