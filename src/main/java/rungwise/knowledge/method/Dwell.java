package rungwise.knowledge.method;

/**
 * Minutes an agent stays.
 *
 * @param usual what a worker plans with; the middle of the range where the entry does not say
 */
public record Dwell(double from, double to, double usual) {
    public static final Dwell NONE = new Dwell(0, 0, 0);

    public Dwell {
        if (usual == 0) {
            usual = (from + to) / 2;
        }
    }
}
