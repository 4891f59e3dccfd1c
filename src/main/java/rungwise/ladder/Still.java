package rungwise.ladder;

import rungwise.science.LeastCostMix;
import rungwise.science.Stubbornness;

/**
 * What is still there: belief in each hidden state and, within it, in how stubborn the spot is, less what tries took off. Who asks
 * how likely the next method is once earlier ones failed asks here: the chance shown, expected minutes, the end, and {@link Worth}
 * where chances were learned.
 */
public final class Still {
    private final Stubbornness spots;
    private final double[] joint;

    /**
     * A belief.
     *
     * @param joint belief in each hidden state and degree of stubbornness: all degrees of the first state, then of the second
     */
    private Still(Stubbornness spots, double[] joint) {
        this.spots = spots;
        this.joint = joint;
    }

    /** Spots as they come. */
    static Still of(Stubbornness spots, double[] weights) {
        double[] joint = new double[weights.length * Stubbornness.degrees()];
        for (int i = 0; i < joint.length; i++) {
            joint[i] = weights[i / Stubbornness.degrees()] * Stubbornness.share(i % Stubbornness.degrees());
        }
        return new Still(spots, joint);
    }

    /** The same, where this is believed of the states; within each, tries moved how stubborn it is. */
    static Still of(Stubbornness spots, double[] weights, double[] degrees) {
        double[] joint = new double[degrees.length];
        int each = Stubbornness.degrees();
        for (int s = 0; s < weights.length; s++) {
            double sum = 0;
            for (int k = 0; k < each; k++) {
                sum += degrees[s * each + k];
            }
            for (int k = 0; k < each; k++) {
                joint[s * each + k] = sum == 0 ? weights[s] * Stubbornness.share(k) : weights[s] * degrees[s * each + k] / sum;
            }
        }
        return new Still(spots, joint);
    }

    /** How likely it is that anything is left. */
    public double reached() {
        double sum = 0;
        for (double share : joint) {
            sum += share;
        }
        return sum;
    }

    /** How likely the next one is to work where it is reached. */
    public double next(Choice choice) {
        double reached = reached();
        return reached == 0 ? 0 : (reached - after(choice).reached()) / reached;
    }

    /** What is left after one more failed. */
    public Still after(Choice choice) {
        double[] left = joint.clone();
        double[] chances = spread(choice.chances(), spots);
        for (int i = 0; i < left.length; i++) {
            left[i] *= 1 - chances[i];
        }
        return new Still(spots, left);
    }

    /** By state and degree. */
    double[] joint() {
        return joint.clone();
    }

    /** As the search for the cheapest ladder wants it, by state and degree. */
    LeastCostMix.Try asTry(Choice choice) {
        return new LeastCostMix.Try(choice.cost(), States.boxed(spread(choice.chances(), spots)), choice.id());
    }

    static double[] spread(double[] chances, Stubbornness spots) {
        int each = Stubbornness.degrees();
        double[] spread = new double[chances.length * each];
        for (int s = 0; s < chances.length; s++) {
            System.arraycopy(spots.spread(chances[s]), 0, spread, s * each, each);
        }
        return spread;
    }
}
