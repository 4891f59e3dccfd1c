package rungwise.shoplog;

/**
 * The log could not be read or written. What was to be kept is not in it, not even in part; only where a server was
 * lost may it be in it whole, as that may happen after it has kept something and before it could say so.
 */
public final class LogFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What stands in the way. */
    public enum Cause {
        /** No room on the disk. */
        FULL,
        /** Another writes for longer than is waited; asking again may help. */
        BUSY,
        /** What was named can hold no log: it is no folder, none can be made there, or it is another database. */
        NO_PLACE,
        /** It cannot be reached, opened or understood. */
        UNREACHABLE
    }

    private final Cause why;

    LogFailure(Cause why, String message, Throwable beneath) {
        super(message, beneath);
        this.why = why;
    }

    public Cause why() {
        return why;
    }
}
