package rungwise.knowledge.common;

/**
 * Hours until something happens to a deposit, on a cool panel (10–25 C, shade) and on a hot one (45 C or more).
 *
 * @param never true where it does not happen at all; the two figures are then infinite
 */
public record Hours(double cool, double hot) {
    public static final Hours NEVER = new Hours(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    public boolean isNever() {
        return Double.isInfinite(cool);
    }
}
