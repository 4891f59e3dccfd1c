package rungwise.knowledge;

/**
 * How thick an agent sits on a panel.
 *
 * @param appliedMicrons as put on
 * @param yieldPascals   stress below which it does not flow; 0 for a liquid
 * @param millipascalSeconds viscosity; counts for a liquid only
 */
public record Layer(Range appliedMicrons, double yieldPascals, double millipascalSeconds) {
    /** A thin liquid from a cloth or a sprayer; recalled figures. */
    public static final Layer THIN_LIQUID = new Layer(new Range(20, 60), 0, 1.5);
}
