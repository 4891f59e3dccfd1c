package rungwise.science;

/**
 * What attempts teach of a chance: a Beta distribution, updated by counting (Gelman and others, Bayesian Data Analysis,
 * single-parameter models).
 *
 * @param a successes and the prior's share of them, above 0
 * @param b failures and the prior's share of them, above 0
 */
public record BetaUpdate(double a, double b) {
    public BetaUpdate {
        if (!(a > 0 && b > 0)) {
            throw new IllegalArgumentException("a Beta needs two figures above 0, not " + a + " and " + b);
        }
    }

    /**
     * A prior that counts as so many attempts.
     *
     * @param mean   above 0, below 1
     * @param weight attempts it is worth, above 0
     */
    public static BetaUpdate prior(double mean, double weight) {
        return new BetaUpdate(mean * weight, (1 - mean) * weight);
    }

    /**
     * After attempts; a doubtful one counts less than whole.
     *
     * @param successes weighted count, 0 or more
     * @param failures  weighted count, 0 or more
     */
    public BetaUpdate after(double successes, double failures) {
        if (!(successes >= 0 && failures >= 0)) {
            throw new IllegalArgumentException("counts are 0 or more");
        }
        return new BetaUpdate(a + successes, b + failures);
    }

    /**
     * How far attempts move a chance: (m·d + s − e)/(m + n). For one prior p that was moved by d before, e is np and this is
     * the mean of Beta(m(p + d), m(1 − p − d)) after the attempts, less p; it also holds where the attempts had different
     * priors, of which only the sum e is known.
     *
     * @param weight   m, attempts that a prior is worth, above 0
     * @param before   d, what others have moved it by
     * @param attempts n, weighted count, 0 or more
     * @param cleared  s, of these, 0 to n
     * @param expected e, of these by their priors, 0 to n
     */
    public static double move(double weight, double before, double attempts, double cleared, double expected) {
        if (!(weight > 0 && attempts >= 0)) {
            throw new IllegalArgumentException("a prior is worth more than 0 attempts, and counts are 0 or more");
        }
        return (weight * before + cleared - expected) / (weight + attempts);
    }

    /** a/(a+b). */
    public double mean() {
        return a / (a + b);
    }

    /** √(ab / ((a+b)²(a+b+1))). */
    public double deviation() {
        double n = a + b;
        return Math.sqrt(a * b / (n * n * (n + 1)));
    }

    /**
     * The learned chance, held near where the trade put it.
     *
     * @param prior chance before anything was learned, 0 to 1
     * @param most  how far it may move either way, 0 to 1
     */
    public double bounded(double prior, double most) {
        return Math.max(0, Math.min(1, Math.max(prior - most, Math.min(prior + most, mean()))));
    }
}
