package rungwise.ladder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungwise.rules.Bar;
import rungwise.rules.Caution;
import rungwise.rules.Concluded;
import rungwise.rules.Conclusion;
import rungwise.rules.Conclusions;
import rungwise.rules.Gated;
import rungwise.rules.Moved;
import rungwise.rules.Narrow;
import rungwise.rules.Protect;

/** What the rules said of one method. */
record Judged(List<Concluded<Bar>> bars, List<Concluded<Gated>> gates, List<Concluded<Moved>> moves,
              List<Concluded<Narrow>> narrows, List<Concluded<Caution>> cautions, List<Concluded<Protect>> protects) {
    static final Judged NOTHING = new Judged(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /** Sorts conclusions by method. */
    static Map<String, Judged> byMethod(Conclusions conclusions) {
        Map<String, Judged> all = new HashMap<>();
        for (Concluded<? extends Conclusion> one : conclusions.all()) {
            put(all, one);
        }
        return all;
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, Judged> all, Concluded<? extends Conclusion> one) {
        Conclusion said = one.conclusion();
        if (said instanceof Bar bar) {
            of(all, bar.method()).bars.add((Concluded<Bar>) one);
        } else if (said instanceof Gated gate) {
            of(all, gate.method()).gates.add((Concluded<Gated>) one);
        } else if (said instanceof Moved moved) {
            of(all, moved.method()).moves.add((Concluded<Moved>) one);
        } else if (said instanceof Narrow narrow) {
            of(all, narrow.method()).narrows.add((Concluded<Narrow>) one);
        } else if (said instanceof Caution caution) {
            of(all, caution.method()).cautions.add((Concluded<Caution>) one);
        } else if (said instanceof Protect protect) {
            of(all, protect.method()).protects.add((Concluded<Protect>) one);
        }
    }

    private static Judged of(Map<String, Judged> all, String method) {
        return all.computeIfAbsent(method, m -> new Judged(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(),
                new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
    }

    Judged and(Judged other) {
        if (other == NOTHING) {
            return this;
        }
        if (this == NOTHING) {
            return other;
        }
        return new Judged(join(bars, other.bars), join(gates, other.gates), join(moves, other.moves),
                join(narrows, other.narrows), join(cautions, other.cautions), join(protects, other.protects));
    }

    private static <T> List<T> join(List<T> one, List<T> two) {
        if (one.isEmpty()) {
            return two;
        }
        if (two.isEmpty()) {
            return one;
        }
        List<T> all = new ArrayList<>(one.size() + two.size());
        all.addAll(one);
        all.addAll(two);
        return all;
    }
}
