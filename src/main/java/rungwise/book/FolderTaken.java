package rungwise.book;

/** The folder holds something else, and a book would bury it. */
public final class FolderTaken extends RuntimeException {
    private static final long serialVersionUID = 1L;

    FolderTaken(String message) {
        super(message);
    }
}
