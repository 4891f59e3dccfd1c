package rungwise.knowledge.overlay;

/**
 * What a label and a sheet leave open, or where they contradict each other.
 *
 * @param id   what kind of doubt it is
 * @param asks the question, with where its answer stands
 */
public record Doubt(String id, String asks) {
    private static final String UNTOLD = "-untold";

    /** Whether nothing contradicts it, so that the strictest that can be meant counts until it is told. */
    public boolean isOnlyUntold() {
        return id.endsWith(UNTOLD);
    }
}
