package rungwise.shoplog;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.science.RandomIntercept;
import rungwise.science.Stubbornness;

/**
 * By how much the logit of each chance moved. It adds up from what a method does to a bond class anywhere, what it does there on one
 * family of surfaces, and what it does to one deposit, so that what was never tried leans on what is like it.
 */
final class Effects {
    /** Of a prior's doubt: half is about the method and the bond, a quarter about the surface, a quarter about the deposit. */
    private static final double OF_THE_BOND = 0.5;
    private static final double OF_THE_SURFACE = 0.25;
    private static final double OF_THE_DEPOSIT = 0.25;
    /** Information of one try at even odds. */
    private static final double OF_ONE_TRY = 0.25;

    private final Map<Object, Integer> numbers = new HashMap<>();
    private final List<Double> precisions = new ArrayList<>();
    private final double doubt;
    private final Stubbornness spots;
    private double[] moved = new double[0];

    /** All surfaces together. */
    private record Anywhere(String method, String bond, boolean hardened) {
    }

    private record OnDeposit(String method, String contaminant, boolean hardened) {
    }

    private Effects(double worth, Stubbornness spots) {
        this.doubt = 1 / (worth * OF_ONE_TRY);
        this.spots = spots;
    }

    /**
     * What series teach.
     *
     * @param seen  how many spots each was met on, in a fixed order
     * @param worth tries that a prior is worth
     */
    static Effects of(Map<Series, long[]> seen, double worth, Stubbornness spots) {
        Effects effects = new Effects(worth, spots);
        Map<Double, Double> typical = new HashMap<>();
        List<RandomIntercept.Spots> all = new ArrayList<>();
        Map<Object, RandomIntercept.Try> tries = new LinkedHashMap<>();
        seen.forEach((series, times) -> all.add(new RandomIntercept.Spots(new double[] {1 - series.hardened(), series.hardened()},
                series.steps().stream().map(s -> tries.computeIfAbsent(List.of(series.contaminant(), s), k -> new RandomIntercept.Try(
                        new double[] {typical.computeIfAbsent(s.ifFresh(), spots::typical), typical.computeIfAbsent(s.ifHardened(), spots::typical)},
                        new int[][] {effects.numbers(s.fresh(), series.contaminant()), effects.numbers(s.hardened(), series.contaminant())},
                        s.worked()))).toList(), times[0])));
        effects.moved = RandomIntercept.of(all, effects.precisions.stream().mapToDouble(p -> p).toArray(), spots);
        return effects;
    }

    private int[] numbers(Cell cell, String contaminant) {
        return new int[] {number(anywhere(cell), OF_THE_BOND), number(cell, OF_THE_SURFACE), number(deposit(cell, contaminant), OF_THE_DEPOSIT)};
    }

    private int number(Object of, double part) {
        return numbers.computeIfAbsent(of, o -> {
            precisions.add(1 / (part * doubt));
            return precisions.size() - 1;
        });
    }

    private static Anywhere anywhere(Cell cell) {
        return new Anywhere(cell.method(), cell.bond(), cell.hardened());
    }

    private static OnDeposit deposit(Cell cell, String contaminant) {
        return new OnDeposit(cell.method(), contaminant, cell.hardened());
    }

    private double of(Object what) {
        Integer number = numbers.get(what);
        return number == null ? 0 : moved[number];
    }

    /** The chance now of what had this chance before; the same where nothing like it was tried. */
    double chance(double prior, String method, String bond, boolean hardened, SurfaceKind surface, String contaminant) {
        Cell cell = new Cell(method, bond, hardened, surface);
        double by = of(anywhere(cell)) + of(cell) + of(deposit(cell, contaminant));
        return by == 0 || prior <= 0 || prior >= 1 ? prior : spots.mean(spots.typical(prior) + by);
    }
}
