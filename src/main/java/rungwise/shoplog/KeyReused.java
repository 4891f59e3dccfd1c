package rungwise.shoplog;

/** A key came back with another attempt than the one it stands for. */
public final class KeyReused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    KeyReused(String message) {
        super(message, null, false, false);
    }
}
