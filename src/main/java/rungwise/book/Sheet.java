package rungwise.book;

import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.text;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

import j2html.TagCreator;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import rungwise.text.Texts;

/** Builds a page from facts, lists and tables, each under a label by its id; what is empty is left out. */
final class Sheet {
    private final List<DomContent> body = new ArrayList<>();
    private final List<DomContent> facts = new ArrayList<>();
    private boolean grouped;

    Sheet say(String sentence) {
        return sentence.isBlank() ? this : add(p(sentence));
    }

    Sheet add(DomContent part) {
        close();
        body.add(part);
        return this;
    }

    /** A heading of the page; lists and tables after it stand beside it. */
    Sheet head(String title) {
        grouped = false;
        return add(h2(label(title)));
    }

    Sheet ungroup() {
        grouped = false;
        return this;
    }

    /** A heading under which lists and tables stand until the next one. */
    Sheet group(String title, Object... named) {
        grouped = true;
        return add(h2(Texts.said("book." + title, named)));
    }

    Sheet fact(String label, String value) {
        return value.isBlank() ? this : fact(label, text(value));
    }

    /** A fact said in links; nothing where there are none. */
    Sheet fact(String label, DomContent value) {
        if (!value.render().isBlank()) {
            facts.add(each(dt(label(label)), dd(value)));
        }
        return this;
    }

    Sheet sentences(String title, Collection<String> lines) {
        return list(title, lines.stream().map(l -> (DomContent) text(l)).toList());
    }

    Sheet list(String title, List<? extends DomContent> lines) {
        return lines.isEmpty() ? this : add(part(title)).add(ul(each(lines, one -> li(one))));
    }

    Sheet table(String title, List<String> heads, List<List<DomContent>> rows) {
        if (rows.isEmpty()) {
            return this;
        }
        return add(part(title)).add(div(TagCreator.table(thead(tr(each(heads, h -> th(label(h))))),
                tbody(each(rows, row -> tr(each(row, cell -> td(cell))))))).withClass("wide"));
    }

    Page page(String path, String title) {
        close();
        return new Page(path, title, body);
    }

    private DomContent part(String title) {
        return grouped ? h3(label(title)) : h2(label(title));
    }

    private static String label(String id) {
        return id.isEmpty() ? "" : Texts.said("book." + id);
    }

    private void close() {
        if (!facts.isEmpty()) {
            body.add(dl(each(List.copyOf(facts), one -> one)));
            facts.clear();
        }
    }
}
