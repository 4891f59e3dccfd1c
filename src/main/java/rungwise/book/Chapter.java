package rungwise.book;

/** The kinds of entry that have a page each. */
enum Chapter {
    CONTAMINANT("contaminants", "Contaminants"),
    SURFACE("surfaces", "Surfaces"),
    METHOD("methods", "Methods"),
    AGENT("agents", "Agents"),
    RULE("rules", "Rules"),
    CHECK("checks", "Checks of the knowledge");

    final String folder;
    final String title;

    Chapter(String folder, String title) {
        this.folder = folder;
        this.title = title;
    }

    String path(String id) {
        return folder + "/" + id + ".html";
    }
}
