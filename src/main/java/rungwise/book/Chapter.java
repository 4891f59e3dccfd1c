package rungwise.book;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of entry that have a page each. */
enum Chapter {
    CONTAMINANT("contaminants", "Contaminants"),
    SURFACE("surfaces", "Surfaces"),
    METHOD("methods", "Methods"),
    AGENT("agents", "Agents"),
    MECHANISM("mechanisms", "Ways of working"),
    RULE("rules", "Rules"),
    DECISION("decisions", "Decisions"),
    ASSUMPTION("assumptions", "Assumptions"),
    CHECK("checks", "Checks of the knowledge");

    final String folder;
    final String title;

    Chapter(String folder, String title) {
        this.folder = folder;
        this.title = title;
    }

    /** Of the folder that a reason's id begins with. */
    static Optional<Chapter> in(String folder) {
        return Arrays.stream(values()).filter(c -> c.folder.equals(folder)).findFirst();
    }

    String path(String id) {
        return folder + "/" + id + ".html";
    }
}
