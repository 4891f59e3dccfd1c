package rungwise.ladder;

import java.util.List;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.Severity;
import rungwise.rules.said.Because;
import rungwise.rules.use.Use;
import rungwise.science.LeastCostMix;

/**
 * A permitted method with everything that choosing and ordering need.
 *
 * @param likely  what is known of its chance, for each suspect
 * @param chances its chance in each hidden state
 * @param own     its own key
 * @param carried its key, or a larger one that it carries because it must come after, or waits as a slow one
 * @param depth   how many must-precede steps it hangs on: ties of the carried key go by it
 * @param cost    worker minutes that trying it on one spot is worth, marks and film included
 * @param asks    needs somebody's agreement
 */
public record Choice(Use use, Verdict verdict, Severity severity, List<Likely> likely, double[] chances, Key own, Key carried,
                     int depth, double workMinutes, double dwellMinutes, double cost, double markChance, boolean asks,
                     List<Because> orderReasons) {
    public Method method() {
        return use.method();
    }

    public String id() {
        return use.method().id();
    }

    String family() {
        return use.method().family();
    }

    double mean(double[] weights) {
        return States.mean(weights, chances);
    }

    double bestChance() {
        double best = 0;
        for (double chance : chances) {
            best = Math.max(best, chance);
        }
        return best;
    }

    /** Whether it is at least as likely in every state. */
    boolean isAsLikelyAs(Choice other) {
        for (int i = 0; i < chances.length; i++) {
            if (chances[i] < other.chances[i]) {
                return false;
            }
        }
        return true;
    }

    /** Whether it is likelier in every state that somebody stated a chance for. */
    boolean isLikelierThan(Choice other) {
        for (int i = 0; i < chances.length - 1; i++) {
            if (chances[i] <= other.chances[i]) {
                return false;
            }
        }
        return true;
    }

    public boolean takesFilm() {
        return own.takesFilm();
    }

    LeastCostMix.Try asTry() {
        return new LeastCostMix.Try(cost, States.boxed(chances), family());
    }

    Choice carrying(Key key, int level, List<Because> reasons) {
        return new Choice(use, verdict, severity, likely, chances, own, key, level, workMinutes, dwellMinutes, cost, markChance,
                asks, reasons);
    }

    /** The same, where it is, with other chances: its key keeps the prior. */
    Choice with(List<Likely> others, double[] otherChances) {
        return new Choice(use, verdict, severity, others, otherChances, own, carried, depth, workMinutes, dwellMinutes, cost,
                markChance, asks, orderReasons);
    }

    /** The same, where its work takes so many times as long. */
    Choice paced(double times, double minuteOfWork) {
        return times == 1 ? this : new Choice(use, verdict, severity, likely, chances, own, carried, depth, workMinutes * times, dwellMinutes,
                cost + minuteOfWork * workMinutes * (times - 1), markChance, asks, orderReasons);
    }
}
