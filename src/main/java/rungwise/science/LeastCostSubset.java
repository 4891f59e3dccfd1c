package rungwise.science;

import java.util.List;

/**
 * Which of some tries, in a fixed order, to make at all: the subset of least expected cost, exactly.
 *
 * <p>Branch and bound: the cost of a prefix only grows, so a prefix dearer than the best whole subset is left.
 * {@link ExpectedCost} defines the cost.
 */
public final class LeastCostSubset {
    private final double[] cost;
    private final double[] ifFresh;
    private final double[] ifHardened;
    private final int[] family;
    private final long always;
    private final long[] needs;
    private final double referral;
    private double bestCost = Double.POSITIVE_INFINITY;
    private long best;

    private LeastCostSubset(List<ExpectedCost.Try> tries, long always, long[] needs, double referral) {
        int n = tries.size();
        this.cost = new double[n];
        this.ifFresh = new double[n];
        this.ifHardened = new double[n];
        this.family = new int[n];
        this.always = always;
        this.needs = needs;
        this.referral = referral;
        List<String> names = tries.stream().map(ExpectedCost.Try::family).distinct().toList();
        for (int i = 0; i < n; i++) {
            ExpectedCost.Try one = tries.get(i);
            cost[i] = one.cost();
            ifFresh[i] = one.ifFresh();
            ifHardened[i] = one.ifHardened();
            family[i] = names.indexOf(one.family());
        }
    }

    /**
     * The subset as a bit mask, bit i for the i-th try.
     *
     * @param tries    at most 60, costs not negative
     * @param always   tries that every subset holds
     * @param needs    for each try the tries that must be in a subset that holds it
     * @param belief   of the hardened state
     * @param referral cost when nothing worked
     */
    public static long of(List<ExpectedCost.Try> tries, long always, long[] needs, Belief belief, double referral) {
        LeastCostSubset search = new LeastCostSubset(tries, always, needs, referral);
        search.best = always;
        search.from(0, 0, 0, 0, belief.fresh(), belief.hardened());
        return search.best;
    }

    private void from(int i, long taken, long families, double spent, double fresh, double hardened) {
        if (spent >= bestCost - 1e-9) {
            return;
        }
        if (i == cost.length) {
            double whole = spent + (fresh + hardened) * referral;
            if (whole < bestCost - 1e-9 && allNeedsMet(taken)) {
                bestCost = whole;
                best = taken;
            }
            return;
        }
        if ((always & 1L << i) == 0) {
            from(i + 1, taken, families, spent, fresh, hardened);
        }
        double share = (families & 1L << family[i]) != 0 ? 0.5 : 1;
        from(i + 1, taken | 1L << i, families | 1L << family[i], spent + (fresh + hardened) * cost[i],
                fresh * (1 - share * ifFresh[i]), hardened * (1 - share * ifHardened[i]));
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
