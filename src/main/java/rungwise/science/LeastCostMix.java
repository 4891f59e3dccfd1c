package rungwise.science;

import java.util.List;

/**
 * Which of some tries, in a fixed order, to make at all, where it is not known which of several deposits is there:
 * {@link LeastCostSubset} over any number of hidden states instead of two.
 */
public final class LeastCostMix {
    private final List<Try> tries;
    private final int[] family;
    private final long always;
    private final long[] needs;
    private final double referral;
    private double bestCost = Double.POSITIVE_INFINITY;
    private long best;

    private LeastCostMix(List<Try> tries, long always, long[] needs, double referral) {
        this.tries = tries;
        this.always = always;
        this.needs = needs;
        this.referral = referral;
        List<String> names = tries.stream().map(Try::family).distinct().toList();
        this.family = tries.stream().mapToInt(t -> names.indexOf(t.family())).toArray();
    }

    /**
     * One thing to try.
     *
     * @param cost    worker minutes that trying costs, whether it works or not
     * @param chances chance that it clears the deposit, for each hidden state in one order
     * @param family  tries of one family are not independent: from the second on they count half their chance
     */
    public record Try(double cost, List<Double> chances, String family) {
        public Try {
            chances = List.copyOf(chances);
        }
    }

    /** The chosen tries as a bit mask, and what they are expected to cost in worker minutes. */
    public record Chosen(long mask, double cost) {
    }

    /**
     * Σₖ cₖ Πⱼ₍ⱼ₌₁…ₖ₋₁₎(1 − pⱼ) in each hidden state, weighted by belief, plus the referral for what is left
     * (decision-theoretic troubleshooting: Heckerman, Breese and Rommelse, 1995), least over all subsets.
     *
     * @param tries    at most 60, in the order in which they are tried
     * @param always   tries that every subset holds
     * @param needs    for each try the tries that must be in a subset that holds it
     * @param belief   probability of each hidden state
     * @param referral cost when nothing worked
     */
    public static Chosen of(List<Try> tries, long always, long[] needs, double[] belief, double referral) {
        LeastCostMix search = new LeastCostMix(tries, always, needs, referral);
        search.best = always;
        search.from(0, 0, 0, 0, belief.clone());
        return new Chosen(search.best, search.bestCost);
    }

    private void from(int i, long taken, long families, double spent, double[] left) {
        if (spent >= bestCost - 1e-9) {
            return;
        }
        double reached = 0;
        for (double share : left) {
            reached += share;
        }
        if (i == tries.size()) {
            double whole = spent + reached * referral;
            if (whole < bestCost - 1e-9 && allNeedsMet(taken)) {
                bestCost = whole;
                best = taken;
            }
            return;
        }
        if ((always & 1L << i) == 0) {
            from(i + 1, taken, families, spent, left);
        }
        Try one = tries.get(i);
        double share = (families & 1L << family[i]) != 0 ? 0.5 : 1;
        double[] after = new double[left.length];
        for (int s = 0; s < left.length; s++) {
            after[s] = left[s] * (1 - share * one.chances().get(s));
        }
        from(i + 1, taken | 1L << i, families | 1L << family[i], spent + reached * one.cost(), after);
    }

    private boolean allNeedsMet(long taken) {
        for (int i = 0; i < needs.length; i++) {
            if ((taken & 1L << i) != 0 && (taken & needs[i]) != needs[i]) {
                return false;
            }
        }
        return true;
    }
}
