package rungwise.book;

import static j2html.TagCreator.a;
import static j2html.TagCreator.h2;

import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Source;

/** All published sources, each with who cites it. */
final class SourcesPage {
    private SourcesPage() {
    }

    static Page of(KnowledgeBase base, Citations citations) {
        Sheet sheet = new Sheet().say("What was read, and which entries and rules rest on it.");
        for (Source one : base.sources().values()) {
            sheet.add(h2(one.id()).withId(one.id())).fact("Title", or(one.title())).fact("Publisher", or(one.publisher()))
                    .fact("Year", or(one.year())).fact("Section", or(one.section())).fact("Strength", or(one.strength()));
            if (or(one.url()).startsWith("http")) {
                sheet.fact("Address", a(one.url()).withHref(one.url()));
            }
            sheet.fact("Cited by", Links.listed(citations.of(one.id())));
        }
        return sheet.page("sources.html", "Sources");
    }

    /** Several fields of a source may be missing in its file. */
    private static String or(String field) {
        return field == null ? "" : field;
    }
}
