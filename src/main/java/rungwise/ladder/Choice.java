package rungwise.ladder;

import java.util.List;
import rungwise.knowledge.Method;
import rungwise.knowledge.Severity;
import rungwise.rules.Because;
import rungwise.rules.Use;
import rungwise.science.Belief;
import rungwise.science.ExpectedCost;

/**
 * A permitted method with everything that choosing and ordering need.
 *
 * @param own     its own key
 * @param carried its key, or a larger one that it carries because it must come after, or waits as a slow one
 * @param depth   how many must-precede steps it hangs on: ties of the carried key go by it
 * @param cost    worker minutes that trying it on one spot is worth, marks and film included
 * @param asks    needs somebody's agreement
 */
record Choice(Use use, Judged judged, Severity severity, Likely likely, Key own, Key carried, int depth,
              double workMinutes, double dwellMinutes, double cost, double markChance, boolean asks,
              List<Because> orderReasons) {
    Method method() {
        return use.method();
    }

    String id() {
        return use.method().id();
    }

    String family() {
        return use.method().family();
    }

    double ifFresh() {
        return likely.ifFresh();
    }

    double ifHardened() {
        return likely.ifHardened();
    }

    double mean(Belief belief) {
        return belief.mean(ifFresh(), ifHardened());
    }

    double bestChance() {
        return Math.max(ifFresh(), ifHardened());
    }

    boolean takesFilm() {
        return severity.filmMicrons() >= 0.3;
    }

    boolean isSlow() {
        return dwellMinutes > 30;
    }

    ExpectedCost.Try asTry() {
        return new ExpectedCost.Try(cost, ifFresh(), ifHardened(), family());
    }

    Choice carrying(Key key, int level, List<Because> reasons) {
        return new Choice(use, judged, severity, likely, own, key, level, workMinutes, dwellMinutes, cost, markChance,
                asks, reasons);
    }

    /** The same, where it is, with other chances: its key keeps the prior. */
    Choice with(Likely other) {
        return new Choice(use, judged, severity, other, own, carried, depth, workMinutes, dwellMinutes, cost,
                markChance, asks, orderReasons);
    }
}
