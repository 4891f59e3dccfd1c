package rungwise.science;

/**
 * How much spots differ: what holds one deposit harder than others of its name holds it against every method. The logit of each
 * chance on a spot is a typical one plus the spot's own, which is normal about 0 (a logistic model with a random intercept: Agresti,
 * Categorical Data Analysis, random effects). So a try that failed makes the next one less likely.
 *
 * @param sd standard deviation of the spot's own logit, 0 or more; 0 = all alike, so that tries are independent
 */
public record Stubbornness(double sd) {
    /** Gauss–Hermite quadrature of five points for the standard normal distribution (Abramowitz and Stegun, table 25.10). */
    private static final double[] NODES = {-2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806};
    private static final double[] WEIGHTS = {0.011257411327721, 0.222075922005613, 0.533333333333332, 0.222075922005613, 0.011257411327721};
    private static final double NEAR = 1e-13;
    private static final int STEPS = 60;

    public Stubbornness {
        if (!(sd >= 0 && sd <= 5)) {
            throw new IllegalArgumentException("a spread of spots lies between 0 and 5, not " + sd);
        }
    }

    /** Degrees of stubbornness that are reckoned with, the most stubborn first. */
    public static int degrees() {
        return NODES.length;
    }

    /** Share of spots of that degree. */
    public static double share(int degree) {
        return WEIGHTS[degree];
    }

    /**
     * The logit on a typical spot of a method that clears this share of all spots.
     *
     * @param mean above 0, below 1
     */
    public double typical(double mean) {
        double logit = Math.log(mean / (1 - mean));
        double low = logit - 8 * (sd + 1);
        double high = logit + 8 * (sd + 1);
        for (int i = 0; i < STEPS; i++) {
            double off = mean(logit) - mean;
            if (Math.abs(off) < NEAR) {
                break;
            }
            low = off < 0 ? logit : low;
            high = off < 0 ? high : logit;
            double next = logit - off / slope(logit);
            logit = next > low && next < high ? next : (low + high) / 2;
        }
        return logit;
    }

    /** The chance on a spot of that degree. */
    public double chance(double typical, int degree) {
        return 1 / (1 + Math.exp(-typical - sd * NODES[degree]));
    }

    /** The share of all spots that a method of this typical logit clears. */
    public double mean(double typical) {
        double sum = 0;
        for (int k = 0; k < NODES.length; k++) {
            sum += WEIGHTS[k] * chance(typical, k);
        }
        return sum;
    }

    private double slope(double typical) {
        double sum = 0;
        for (int k = 0; k < NODES.length; k++) {
            double p = chance(typical, k);
            sum += WEIGHTS[k] * p * (1 - p);
        }
        return Math.max(sum, 1e-300);
    }

    /** The chance on a spot of each degree, of a method that clears this share of all spots; what is certain is so everywhere. */
    public double[] spread(double mean) {
        double[] spread = new double[NODES.length];
        double typical = mean > 0 && mean < 1 ? typical(mean) : 0;
        for (int k = 0; k < spread.length; k++) {
            spread[k] = mean <= 0 ? 0 : mean >= 1 ? 1 : chance(typical, k);
        }
        return spread;
    }
}
