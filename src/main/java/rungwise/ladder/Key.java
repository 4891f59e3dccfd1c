package rungwise.ladder;

import java.util.Comparator;
import java.util.List;

/**
 * How gentle a method is on a surface: compared field by field, never added up, because damage cannot be bought with
 * minutes. It holds no belief, no cost and no log.
 */
public record Key(boolean takesFilm, int worst, int chemical, int mechanical, int thermal, double filmMicrons,
           double marring, double minusPriorHardened, String id) implements Comparable<Key> {
    private static final Comparator<Key> ORDER = Comparator.comparing(Key::takesFilm).thenComparingInt(Key::worst)
            .thenComparingInt(Key::chemical).thenComparingInt(Key::mechanical).thenComparingInt(Key::thermal)
            .thenComparingDouble(Key::filmMicrons).thenComparingDouble(Key::marring)
            .thenComparingDouble(Key::minusPriorHardened).thenComparing(Key::id);

    @Override
    public int compareTo(Key other) {
        return ORDER.compare(this, other);
    }

    public List<Object> fields() {
        return List.of(takesFilm, worst, chemical, mechanical, thermal, filmMicrons, marring, minusPriorHardened, id);
    }
}
