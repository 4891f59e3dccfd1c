package rungwise.shoplog;

import rungwise.science.ChanceRange;

/**
 * How far recorded tries move a chance.
 *
 * <p>A prior p worth m tries is Beta(mp, m(1 − p)). After n tries of which s cleared its mean is (mp + s)/(m + n), that
 * is p + (s − np)/(m + n) (Gelman and others, Bayesian Data Analysis, 3rd edition, section 2.4). With e = np expected the
 * move is (s − e)/(m + n), which also holds where the tries had different priors. Where other surfaces have moved the
 * prior by d before, the tries start from p + d, and the move is (m·d + s − e)/(m + n).
 */
final class Shift {
    /** Whatever a log says, it moves a chance no further than this. */
    static final double AT_MOST = 0.15;

    private Shift() {
    }

    /**
     * The move of a chance, from −0.15 to 0.15.
     *
     * @param own    tries on this family of surfaces
     * @param others tries of the same method on the same bond class and state on other families
     */
    static double of(Tally own, Tally others) {
        double worth = ChanceRange.WORTH_TRIES;
        double pooled = (others.cleared() - others.expected()) / (worth + others.tries());
        double move = (worth * pooled + own.cleared() - own.expected()) / (worth + own.tries());
        return Math.max(-AT_MOST, Math.min(AT_MOST, move));
    }
}
