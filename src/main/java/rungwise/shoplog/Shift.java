package rungwise.shoplog;

import rungwise.science.BetaUpdate;
import rungwise.science.ChanceRange;

/**
 * How far recorded tries move a chance.
 *
 * <p>A prior is worth {@link ChanceRange#WORTH_TRIES} tries; where other surfaces have moved it before, the tries start from
 * there ({@link BetaUpdate#move}).
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
        double pooled = BetaUpdate.move(worth, 0, others.tries(), others.cleared(), others.expected());
        double move = BetaUpdate.move(worth, pooled, own.tries(), own.cleared(), own.expected());
        return Math.max(-AT_MOST, Math.min(AT_MOST, move));
    }
}
