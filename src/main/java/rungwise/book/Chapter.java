package rungwise.book;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of entry that have a page each. */
enum Chapter {
    CONTAMINANT("contaminants"),
    SURFACE("surfaces"),
    METHOD("methods"),
    AGENT("agents"),
    MECHANISM("mechanisms"),
    RULE("rules"),
    DECISION("decisions"),
    ASSUMPTION("assumptions"),
    CHECK("checks");

    final String folder;

    Chapter(String folder) {
        this.folder = folder;
    }

    /** The id of its heading. */
    String title() {
        return "chapter." + folder;
    }

    /** Of the folder that a reason's id begins with. */
    static Optional<Chapter> in(String folder) {
        return Arrays.stream(values()).filter(c -> c.folder.equals(folder)).findFirst();
    }

    String path(String id) {
        return folder + "/" + id + ".html";
    }
}
