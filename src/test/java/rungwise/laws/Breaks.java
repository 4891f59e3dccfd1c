package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import rungwise.knowledge.common.Figures;

/**
 * What a law found wrong over many answers: how often, and of each kind the first, so that one run tells what to look at;
 * and in how many of the answers there was anything to hold it against.
 */
final class Breaks {
    private static final int SHOWN = 12;
    private static final int LEAST_PERCENT = 30;
    private final String law;
    private final Map<String, Kind> kinds = new TreeMap<>();
    private final AtomicLong looked = new AtomicLong();
    private final AtomicLong real = new AtomicLong();
    private final AtomicLong broken = new AtomicLong();

    private record Kind(int times, String first) {
    }

    Breaks(String law) {
        this.law = law;
    }

    /**
     * Takes what was found in one answer.
     *
     * @param puts whether the answer puts the law to the test at all
     */
    void look(Placed answer, boolean puts, List<String> wrong) {
        looked.incrementAndGet();
        real.addAndGet(puts ? 1 : 0);
        if (!wrong.isEmpty()) {
            broken.incrementAndGet();
            String where = where(answer);
            wrong.forEach(w -> add(w, where));
        }
    }

    private synchronized void add(String what, String where) {
        kinds.merge(what, new Kind(1, where), (old, now) -> new Kind(old.times() + 1, old.first().compareTo(where) <= 0
                ? old.first() : where));
    }

    private static String where(Placed answer) {
        return rounded(answer.belief()) + " on " + answer.question().surface() + ", age " + answer.question().age() + (answer.question().tried()
                .isEmpty() ? "" : ", after " + answer.question().tried().stream().map(t -> t.method().or(t::substance).orElse("")
                + " " + t.outcome()).toList());
    }

    private static Map<String, Double> rounded(Map<String, Double> belief) {
        Map<String, Double> rounded = new TreeMap<>(belief);
        rounded.replaceAll((id, p) -> Figures.thousandths(p));
        return rounded;
    }

    /** Answers that put the law to the test, in percent. */
    long percent() {
        return looked.get() == 0 ? 0 : 100 * real.get() / looked.get();
    }

    long broken() {
        return broken.get();
    }

    long real() {
        return real.get();
    }

    void none() {
        String told = "law " + law + ": " + broken + " answers break it; " + real + " of " + looked + " put it to the test";
        System.out.println(told);
        assertThat(shown()).as(told + ", in " + kinds.size() + " ways").isEmpty();
    }

    /** No more than are known to break it, and not fewer either: who mends one lowers the number. */
    void known(int times) {
        System.out.println("law " + law + ": " + broken + " answers break it, " + times + " are known to; " + real + " of " + looked
                + " put it to the test");
        assertThat(broken()).as("answers that break law %s: %s", law, shown()).isEqualTo(times);
        assertThat(percent()).as("answers that put law %s to the test, in percent", law).isGreaterThanOrEqualTo(LEAST_PERCENT);
    }

    /** None, and in at least three of ten answers there could have been one. */
    void noneOfEnough() {
        noneOfAtLeast(LEAST_PERCENT);
    }

    /** None, and so many answers in a hundred could have broken it. */
    void noneOfAtLeast(int percent) {
        none();
        assertThat(percent()).as("answers that put law %s to the test, in percent", law).isGreaterThanOrEqualTo(percent);
    }

    /** The most frequent kinds. */
    private synchronized List<String> shown() {
        return kinds.entrySet().stream().sorted(Comparator.comparingInt((Map.Entry<String, Kind> k) -> -k.getValue().times())
                .thenComparing(Map.Entry.comparingByKey())).limit(SHOWN)
                .map(k -> k.getKey() + " (" + k.getValue().times() + " times; first: " + k.getValue().first() + ")").toList();
    }
}
