package rungwise.practice;

import java.util.Locale;

/** How many of how many; counts up while cases are read. */
final class Score {
    private final String name;
    private int met;
    private int all;

    Score(String name) {
        this.name = name;
    }

    /** Counts one, and gives back whether it was met. */
    boolean count(boolean isMet) {
        all++;
        met += isMet ? 1 : 0;
        return isMet;
    }

    double share() {
        return all == 0 ? 0 : (double) met / all;
    }

    String name() {
        return name;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s %.0f %% (%d of %d)", name, 100 * share(), met, all);
    }
}
