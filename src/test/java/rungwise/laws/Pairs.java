package rungwise.laws;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Rows in which each pair of values of two dimensions meets at least once, built greedily and always the same.
 *
 * <p>Some values leave little of an answer to look at (a hold, a harm, a refusal). What meets only beside one of them has
 * not been looked at, so every pair must meet in a row that is muted by nothing, or by that pair alone.
 */
final class Pairs {
    private static final int CANDIDATES = 6;

    /** One value of one dimension, by number. */
    record Value(int dimension, int value) {
    }

    /** Two values of two dimensions, the earlier dimension first. */
    record Pair(Value one, Value two) {
        static Pair of(Value a, Value b) {
            return a.dimension() < b.dimension() ? new Pair(a, b) : new Pair(b, a);
        }
    }

    private final int[] sizes;
    private final Set<Pair> impossible;
    private final Set<Value> muting;
    private final Random random = new Random(20261125);

    /**
     * What is to meet.
     *
     * @param sizes      values of each dimension
     * @param impossible what may not meet
     * @param muting     values that leave little to look at
     */
    Pairs(int[] sizes, Set<Pair> impossible, Set<Value> muting) {
        this.sizes = sizes.clone();
        this.impossible = impossible;
        this.muting = muting;
    }

    List<int[]> rows() {
        List<int[]> rows = new ArrayList<>(covering(pairs(false)));
        rows.addAll(covering(pairs(true)));
        return rows;
    }

    /** Pairs that no row holds as it must; empty where the rows are complete. Counts again, whatever built the rows. */
    Set<Pair> unmet(List<int[]> rows) {
        Set<Pair> unmet = new HashSet<>(pairs(false));
        unmet.addAll(pairs(true));
        rows.forEach(r -> unmet.removeAll(told(r)));
        return unmet;
    }

    /** The pairs of a row that nothing else in it mutes. */
    private Set<Pair> told(int[] row) {
        List<Value> mute = values(row).stream().filter(muting::contains).toList();
        return met(row).stream().filter(p -> mute.stream().allMatch(m -> m.equals(p.one()) || m.equals(p.two())))
                .collect(Collectors.toSet());
    }

    /** Every possible pair with a value that mutes the answer, or every one without. */
    List<Pair> pairs(boolean muted) {
        List<Pair> pairs = new ArrayList<>();
        for (int a = 0; a < sizes.length; a++) {
            for (int b = a + 1; b < sizes.length; b++) {
                for (int x = 0; x < sizes[a]; x++) {
                    for (int y = 0; y < sizes[b]; y++) {
                        Pair pair = new Pair(new Value(a, x), new Value(b, y));
                        if (isMuted(pair) == muted && !impossible.contains(pair)) {
                            pairs.add(pair);
                        }
                    }
                }
            }
        }
        return pairs;
    }

    static Set<Pair> met(int[] row) {
        Set<Pair> met = new HashSet<>();
        List<Value> values = values(row);
        for (int a = 0; a < row.length; a++) {
            for (int b = a + 1; b < row.length; b++) {
                met.add(new Pair(values.get(a), values.get(b)));
            }
        }
        return met;
    }

    private static List<Value> values(int[] row) {
        List<Value> values = new ArrayList<>();
        for (int d = 0; d < row.length; d++) {
            values.add(new Value(d, row[d]));
        }
        return values;
    }

    private boolean isMuted(Pair pair) {
        return muting.contains(pair.one()) || muting.contains(pair.two());
    }

    private List<int[]> covering(List<Pair> wanted) {
        List<int[]> rows = new ArrayList<>();
        Set<Pair> open = new LinkedHashSet<>(wanted);
        while (!open.isEmpty()) {
            int[] best = null;
            int most = -1;
            for (int i = 0; i < CANDIDATES; i++) {
                int[] row = row(open.iterator().next(), open);
                int gained = (int) told(row).stream().filter(open::contains).count();
                if (gained > most) {
                    most = gained;
                    best = row;
                }
            }
            open.removeAll(told(best));
            rows.add(best);
        }
        return rows;
    }

    /** A row around one pair, each further value the one that meets most of what is open. */
    private int[] row(Pair seed, Set<Pair> open) {
        List<Value> chosen = new ArrayList<>(List.of(seed.one(), seed.two()));
        List<Integer> others = new ArrayList<>();
        for (int d = 0; d < sizes.length; d++) {
            if (d != seed.one().dimension() && d != seed.two().dimension()) {
                others.add(d);
            }
        }
        Collections.shuffle(others, random);
        for (int d : others) {
            Value best = null;
            long most = -1;
            int from = random.nextInt(sizes[d]);
            for (int i = 0; i < sizes[d]; i++) {
                Value value = new Value(d, (from + i) % sizes[d]);
                if (muting.contains(value) || chosen.stream().anyMatch(c -> impossible.contains(Pair.of(c, value)))) {
                    continue;
                }
                long gained = chosen.stream().filter(c -> open.contains(Pair.of(c, value))).count();
                if (gained > most) {
                    most = gained;
                    best = value;
                }
            }
            chosen.add(best);
        }
        int[] row = new int[sizes.length];
        chosen.forEach(c -> row[c.dimension()] = c.value());
        return row;
    }
}
