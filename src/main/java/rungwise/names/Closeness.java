package rungwise.names;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwise.knowledge.words.Spoken;
import rungwise.text.Near;

/**
 * How near a word comes to what something is called, from 0 to 1: by letters for what is misspelt, word by word for what is
 * turned round or said at length. It only orders suggestions; nothing is ever read by it.
 */
final class Closeness {
    /** Below this two words are no misspelling of one another. */
    private static final double ALIKE = 0.6;
    /** One is how the other begins: "poo" and "poop", "polish" and "polishing". */
    private static final double BEGINS = 0.8;
    private static final double SHARE_OF_SAID = 0.6;
    private static final double SHARE_OF_BEST = 0.6;
    private static final double SHARE_OF_ABOUT = 0.2;
    /** They stand everywhere and say nothing. */
    private static final Set<String> SMALL = Set.of("a", "an", "the", "of", "on", "in", "from", "to", "at", "and", "with", "for");

    private final Spoken spoken;
    private final List<String> said;
    private final String letters;

    Closeness(Spoken spoken, String said) {
        this.spoken = spoken;
        this.said = words(said);
        this.letters = spoken.form(said);
    }

    private List<String> words(String text) {
        return spoken.words(text).stream().filter(w -> !SMALL.contains(w)).toList();
    }

    /** Whether each word that was said is one by which the thing is called. */
    boolean isPartOf(Called thing) {
        return !said.isEmpty() && thing.said().anyMatch(label -> new HashSet<>(words(label)).containsAll(said));
    }

    double to(Called thing) {
        if (said.isEmpty()) {
            return 0;
        }
        double best = thing.said().mapToDouble(this::toLabel).max().orElse(0);
        List<String> all = thing.said().flatMap(label -> words(label).stream()).distinct().toList();
        return SHARE_OF_BEST * best + (1 - SHARE_OF_BEST) * found(said, all) + SHARE_OF_ABOUT * foundWhole(words(thing.about()));
    }

    private double toLabel(String label) {
        String form = spoken.form(label);
        double byLetters = 1 - (double) Near.distance(letters, form) / Math.max(letters.length(), form.length());
        List<String> words = words(label);
        double byWords = SHARE_OF_SAID * found(said, words) + (1 - SHARE_OF_SAID) * found(words, said);
        return Math.max(byLetters >= ALIKE ? byLetters : 0, byWords);
    }

    /** Of the first words, how far each is found among the others. */
    private static double found(List<String> words, List<String> among) {
        return words.stream().mapToDouble(w -> among.stream().mapToDouble(other -> alike(w, other)).max().orElse(0)).average()
                .orElse(0);
    }

    private double foundWhole(List<String> among) {
        return said.stream().mapToDouble(w -> among.contains(w) ? 1 : 0).average().orElse(0);
    }

    private static double alike(String one, String other) {
        if (one.equals(other)) {
            return 1;
        }
        boolean begins = Math.min(one.length(), other.length()) >= 3 && (one.startsWith(other) || other.startsWith(one));
        double byLetters = 1 - (double) Near.distance(one, other) / Math.max(one.length(), other.length());
        return begins ? Math.max(BEGINS, byLetters) : byLetters >= ALIKE ? byLetters : 0;
    }
}
