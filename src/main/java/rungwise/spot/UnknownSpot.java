package rungwise.spot;

/** Nobody kept a spot of that name. */
public final class UnknownSpot extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String id;

    UnknownSpot(String id) {
        super(id, null, false, false);
        this.id = id;
    }

    public String id() {
        return id;
    }
}
