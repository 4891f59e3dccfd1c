package rungwise.knowledge.surface;

/**
 * Mechanical grade a surface bears.
 *
 * @param free   highest grade without asking
 * @param agreed highest grade at all; between the two it needs the customer's agreement
 */
public record Mechanical(int free, int agreed) {
    public Mechanical stricter(Mechanical other) {
        return new Mechanical(Math.min(free, other.free), Math.min(agreed, other.agreed));
    }
}
