package rungwise.book;

import rungwise.text.Texts;

import static j2html.TagCreator.a;
import static j2html.TagCreator.body;
import static j2html.TagCreator.document;
import static j2html.TagCreator.each;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.head;
import static j2html.TagCreator.header;
import static j2html.TagCreator.html;
import static j2html.TagCreator.link;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.title;

/** Puts a page between the same covers as all others. */
final class Binding {
    static final String STYLE = "style.css";

    private final String revision;

    Binding(String revision) {
        this.revision = revision;
    }

    String bind(Page page) {
        return document(html(
                head(meta().withCharset("utf-8"),
                        meta().withName("viewport").withContent("width=device-width, initial-scale=1"),
                        title(page.title()), link().withRel("stylesheet").withHref(page.root() + STYLE)),
                body(header(a(Texts.said("book.rule-book")).withHref(page.root() + "index.html")),
                        main(h1(page.title()), each(page.body(), one -> one)),
                        footer(Texts.said("book.revision", "revision", revision)))).withLang(Texts.said("book.language"))) + "\n";
    }
}
