package rungwise.book;

import j2html.tags.DomContent;
import java.util.List;

/**
 * One page before it is bound.
 *
 * @param path  from the first page of the book, with slashes
 * @param title as in its heading
 */
record Page(String path, String title, List<DomContent> body) {
    Page {
        body = List.copyOf(body);
    }

    /** The way back to the folder of the first page. */
    String root() {
        return "../".repeat((int) path.chars().filter(c -> c == '/').count());
    }
}
