package rungwise.ladder;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import rungwise.rules.said.Bar;
import rungwise.rules.said.Caution;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusion;
import rungwise.rules.said.Gated;
import rungwise.rules.said.Marring;
import rungwise.rules.said.Moved;
import rungwise.rules.said.Narrow;
import rungwise.rules.said.Needless;
import rungwise.rules.said.Protect;
import rungwise.rules.said.Spared;

/** What the rules said of one method. */
public record Verdict(List<Concluded<Bar>> bars, List<Concluded<Gated>> gates, List<Concluded<Moved>> moves,
                      List<Concluded<Narrow>> narrows, List<Concluded<Caution>> cautions, List<Concluded<Protect>> protects,
                      List<Concluded<Spared>> spared, List<Concluded<Marring>> marrings,
                      List<Concluded<Needless>> needless) {
    static final Verdict NOTHING = new Verdict(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
            List.of(), List.of());

    /** Sorts conclusions by method. */
    static Map<String, Verdict> byMethod(List<? extends Concluded<? extends Conclusion>> conclusions) {
        Map<String, Verdict> all = new TreeMap<>();
        for (Concluded<? extends Conclusion> one : conclusions) {
            put(all, one);
        }
        return all;
    }

    @SuppressWarnings("unchecked")
    private static void put(Map<String, Verdict> all, Concluded<? extends Conclusion> one) {
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
        } else if (said instanceof Spared spared) {
            of(all, spared.method()).spared.add((Concluded<Spared>) one);
        } else if (said instanceof Marring marring) {
            of(all, marring.method()).marrings.add((Concluded<Marring>) one);
        } else if (said instanceof Needless needless) {
            of(all, needless.method()).needless.add((Concluded<Needless>) one);
        }
    }

    private static Verdict of(Map<String, Verdict> all, String method) {
        return all.computeIfAbsent(method, m -> new Verdict(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(),
                new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
    }

    Verdict and(Verdict other) {
        if (other == NOTHING) {
            return this;
        }
        if (this == NOTHING) {
            return other;
        }
        return new Verdict(join(bars, other.bars), join(gates, other.gates), join(moves, other.moves),
                join(narrows, other.narrows), join(cautions, other.cautions), join(protects, other.protects),
                join(spared, other.spared), join(marrings, other.marrings),
                join(needless, other.needless));
    }

    /** What two suspects make of it in the same words counts once. */
    private static <C extends Conclusion> List<Concluded<C>> join(List<Concluded<C>> one, List<Concluded<C>> two) {
        if (one.isEmpty()) {
            return two;
        }
        if (two.isEmpty()) {
            return one;
        }
        Set<Concluded<C>> all = new LinkedHashSet<>(one);
        all.addAll(two);
        return List.copyOf(all);
    }

    boolean isPermitted() {
        return bars.isEmpty();
    }

    /** Whether nothing bars it but tries already made. */
    public boolean isUnbarred() {
        return bars.stream().allMatch(b -> b.conclusion().isSpent());
    }

    /** Barred by the weather alone. */
    boolean waitsForWeather() {
        return !bars.isEmpty() && bars.stream().allMatch(b -> b.conclusion().isWeather());
    }
}
