package rungwise.book;

import static j2html.TagCreator.a;
import static j2html.TagCreator.h2;

import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Source;
import rungwise.text.Texts;

/** All published sources, each with who cites it. */
final class SourcesPage {
    private SourcesPage() {
    }

    static Page of(KnowledgeBase base, Citations citations) {
        Sheet sheet = new Sheet().say(Texts.said("book.sources-page"));
        for (Source one : base.sources().values()) {
            sheet.add(h2(one.id()).withId(one.id())).fact("title", or(one.title())).fact("publisher", or(one.publisher()))
                    .fact("year", or(one.year())).fact("section", or(one.section())).fact("strength", or(one.strength()));
            if (or(one.url()).startsWith("http")) {
                sheet.fact("address", a(one.url()).withHref(one.url()));
            }
            sheet.fact("cited-by", Links.listed(citations.of(one.id())));
        }
        return sheet.page("sources.html", Texts.said("book.sources"));
    }

    /** Several fields of a source may be missing in its file. */
    private static String or(String field) {
        return field == null ? "" : field;
    }
}
