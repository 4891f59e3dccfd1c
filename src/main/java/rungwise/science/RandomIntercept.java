package rungwise.science;

import java.util.Arrays;
import java.util.List;

/**
 * What sequences of tries teach, where spots differ in stubbornness and each spot is of one of several hidden classes: a logistic
 * model with a random intercept, whose effects are drawn to 0 by a normal prior. It is fitted by expectation and maximisation
 * (Dempster, Laird and Rubin, 1977): how far each class and degree of stubbornness is believed of a spot, then a damped Newton step
 * for each effect. It has no chance in it: the same tries give the same effects.
 */
public final class RandomIntercept {
    private static final int ROUNDS = 60;
    private static final double SETTLED = 2e-4;
    private static final double LONGEST_STEP = 1;
    private static final double ALMOST_NONE = 1e-12;

    private final double[] precision;
    private final Stubbornness spots;
    private final double[] effects;
    private final double[] slope;
    private final double[] curve;

    private RandomIntercept(double[] precision, Stubbornness spots) {
        this.precision = precision;
        this.spots = spots;
        this.effects = new double[precision.length];
        this.slope = new double[precision.length];
        this.curve = new double[precision.length];
    }

    /**
     * One try.
     *
     * @param prior   typical logit in each class, from {@link Stubbornness#typical}
     * @param effects in each class: which effects add to it, none twice, as many in each
     * @param worked  1 all of it, 0 nothing, between them a part
     */
    public record Try(double[] prior, int[][] effects, double worked) {
    }

    /**
     * Spots on which the same was tried with the same outcome.
     *
     * @param belief of each class before the first try
     * @param tries  in their order
     * @param times  how many such spots
     */
    public record Spots(double[] belief, List<Try> tries, double times) {
    }

    /**
     * The effects.
     *
     * @param precision of the prior of each: 1 / variance, above 0
     */
    public static double[] of(List<Spots> seen, double[] precision, Stubbornness spots) {
        RandomIntercept fit = new RandomIntercept(precision, spots);
        for (int round = 0; round < ROUNDS; round++) {
            Arrays.fill(fit.slope, 0);
            Arrays.fill(fit.curve, 0);
            seen.forEach(fit::expect);
            if (fit.step(most(seen)) < SETTLED) {
                break;
            }
        }
        return fit.effects;
    }

    /** Effects in one logit: a step of each moves all of them together, so each goes so many times less far. */
    private static int most(List<Spots> seen) {
        return seen.stream().flatMap(s -> s.tries().stream()).flatMap(t -> Arrays.stream(t.effects())).mapToInt(e -> e.length).max().orElse(1);
    }

    private void expect(Spots one) {
        int degrees = Stubbornness.degrees();
        int classes = one.belief().length;
        int tries = one.tries().size();
        double[][] chance = new double[classes * degrees][tries];
        double[] weight = new double[classes * degrees];
        double sum = 0;
        for (int c = 0; c < classes; c++) {
            for (int k = 0; k < degrees; k++) {
                double believed = one.belief()[c] * Stubbornness.share(k);
                for (int t = 0; t < tries && believed > 0; t++) {
                    double p = spots.chance(logit(one.tries().get(t), c), k);
                    double worked = one.tries().get(t).worked();
                    chance[c * degrees + k][t] = p;
                    believed *= worked == 1 ? p : worked == 0 ? 1 - p : Math.pow(p, worked) * Math.pow(1 - p, 1 - worked);
                }
                weight[c * degrees + k] = believed;
                sum += believed;
            }
        }
        for (int j = 0; j < weight.length && sum > 0; j++) {
            double share = one.times() * weight[j] / sum;
            for (int t = 0; t < tries && share > ALMOST_NONE; t++) {
                double p = chance[j][t];
                for (int effect : one.tries().get(t).effects()[j / degrees]) {
                    slope[effect] += share * (one.tries().get(t).worked() - p);
                    curve[effect] += share * p * (1 - p);
                }
            }
        }
    }

    private double logit(Try one, int ofClass) {
        double logit = one.prior()[ofClass];
        for (int effect : one.effects()[ofClass]) {
            logit += effects[effect];
        }
        return logit;
    }

    private double step(int together) {
        double longest = 0;
        for (int e = 0; e < effects.length; e++) {
            double step = (slope[e] - precision[e] * effects[e]) / (together * curve[e] + precision[e]);
            step = Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, step));
            effects[e] += step;
            longest = Math.max(longest, Math.abs(step));
        }
        return longest;
    }
}
