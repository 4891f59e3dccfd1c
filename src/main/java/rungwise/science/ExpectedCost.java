package rungwise.science;

import java.util.List;

/** Cost of trying things in a fixed order until one works. */
public final class ExpectedCost {
    private ExpectedCost() {
    }

    /**
     * One thing to try.
     *
     * @param cost       what trying costs, whether it works or not
     * @param ifFresh    chance in the fresh state
     * @param ifHardened chance in the hardened state
     * @param family     tries of one family are not independent: from the second on they count half their chance
     */
    public record Try(double cost, double ifFresh, double ifHardened, String family) {
    }

    /**
     * Σₖ cₖ Πⱼ₍ⱼ₌₁…ₖ₋₁₎(1 − pⱼ) in each hidden state, weighted by belief, plus the referral for what is left
     * (decision-theoretic troubleshooting: Heckerman, Breese and Rommelse, 1995).
     *
     * @param tries    in the order in which they are tried
     * @param belief   of the hardened state
     * @param referral cost when nothing worked
     */
    public static double of(List<Try> tries, Belief belief, double referral) {
        double fresh = belief.fresh();
        double hardened = belief.hardened();
        double cost = 0;
        for (int i = 0; i < tries.size(); i++) {
            Try one = tries.get(i);
            cost += (fresh + hardened) * one.cost();
            double share = 1;
            for (int j = 0; j < i; j++) {
                if (tries.get(j).family().equals(one.family())) {
                    share = 0.5;
                    break;
                }
            }
            fresh *= 1 - share * one.ifFresh();
            hardened *= 1 - share * one.ifHardened();
        }
        return cost + (fresh + hardened) * referral;
    }
}
