package rungwise.science;

import java.util.Arrays;

/** Several signs taken together. */
public final class Evidence {
    private Evidence() {
    }

    /**
     * The logarithm of the likelihood ratio of signs that are alike in kind. Multiplying them as if they were
     * independent would count one thing many times. So of those that speak for it the strongest counts in full, and
     * each further one half as much as the one before; those against it likewise; and the sum stays within the cap.
     * At most, signs alike in strength thus count as two. A working rule, without a published source.
     *
     * @param logRatios natural logarithms of likelihood ratios, of one group of signs
     * @param cap       likelihood ratio, 1 or more, that the group never exceeds in either direction
     */
    public static double ofAGroup(double[] logRatios, double cap) {
        if (!(cap >= 1)) {
            throw new IllegalArgumentException("a cap is a ratio of 1 or more, not " + cap);
        }
        double[] sorted = logRatios.clone();
        Arrays.sort(sorted);
        double sum = 0;
        double share = 1;
        for (int i = sorted.length - 1; i >= 0 && sorted[i] > 0; i--, share /= 2) {
            sum += share * sorted[i];
        }
        share = 1;
        for (int i = 0; i < sorted.length && sorted[i] < 0; i++, share /= 2) {
            sum += share * sorted[i];
        }
        double most = Math.log(cap);
        return Math.max(-most, Math.min(most, sum));
    }

    /**
     * Probabilities from weights in logarithms: Bayes' rule, scaled so that the largest never overflows.
     *
     * @param logWeights prior and evidence summed, one for each hypothesis
     */
    public static double[] probabilities(double[] logWeights) {
        double largest = Arrays.stream(logWeights).max().orElse(0);
        double[] weights = Arrays.stream(logWeights).map(w -> Math.exp(w - largest)).toArray();
        double sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(w -> w / sum).toArray();
    }
}
