package rungwise.laws;

import java.util.ArrayList;
import java.util.List;

/** Whether the range of a chance holds as much as it promises: eight in ten of the chances that the tries behind it leave open. */
final class Ranges {
    /** What is promised, less what a normal approximation and three decimals cost at the ends. */
    static final double HOLDS_AT_LEAST = 0.70;
    private static final int CELLS = 4000;

    private Ranges() {
    }

    /** Offers whose range is too narrow for so many tries. */
    static List<String> tooNarrow(Placed answer, double tries) {
        List<String> narrow = new ArrayList<>();
        answer.offered().filter(r -> r.chance().mean() >= 0.1 && r.chance().mean() <= 0.95).forEach(r -> {
            double holds = holds(r.chance(), tries);
            if (holds < HOLDS_AT_LEAST) {
                narrow.add("the range of a chance of " + r.chance().mean() + " holds " + Math.round(holds * 100) + " % and not 80 %");
            }
        });
        return narrow;
    }

    /** Share of a Beta distribution with that mean, worth so many tries, that lies in the range; summed up cell by cell. */
    static double holds(Placed.Chance chance, double tries) {
        double a = chance.mean() * tries;
        double b = (1 - chance.mean()) * tries;
        double inside = 0;
        double all = 0;
        for (int i = 0; i < CELLS; i++) {
            double p = (i + 0.5) / CELLS;
            double density = Math.exp((a - 1) * Math.log(p) + (b - 1) * Math.log(1 - p));
            all += density;
            inside += p >= chance.low() && p <= chance.high() ? density : 0;
        }
        return inside / all;
    }
}
