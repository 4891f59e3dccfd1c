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
    private static final double ALIKE = 0.7;
    /** One is how the other begins: "polish" and "polishing". */
    private static final double BEGINS = 0.8;
    private static final int BEGINNING = 4;
    /** So long a word may be one letter wrong, and so long two; in a shorter one another letter makes another word. */
    private static final int ONE_SLIP = 5;
    private static final int TWO_SLIPS = 8;
    private static final double SHARE_OF_SAID = 0.6;
    private static final double SHARE_OF_BEST = 0.6;
    private static final double SHARE_OF_ABOUT = 0.2;
    /** What an idle word counts beside one that tells something: "black" must not lead to all that is black. */
    private static final double IDLE = 0.2;
    /** They stand everywhere and say nothing. */
    private static final Set<String> SMALL = Set.of("a", "an", "the", "of", "on", "in", "from", "to", "at", "and", "with", "for");

    private final Spoken spoken;
    private final Set<String> idle;
    private final List<String> said;
    private final String letters;

    Closeness(Spoken spoken, String said, Set<String> idle) {
        this.spoken = spoken;
        this.idle = idle;
        this.said = words(said);
        this.letters = spoken.form(said);
    }

    private List<String> words(String text) {
        return spoken.words(text).stream().filter(w -> !SMALL.contains(w)).toList();
    }

    /** Whether each word that was said is one by which the thing is called. */
    boolean isPartOf(Called thing) {
        return said.stream().anyMatch(w -> !idle.contains(w)) && thing.said().anyMatch(label -> new HashSet<>(words(label)).containsAll(said));
    }

    /** Whether it is nothing but a slip of what the thing is called. */
    boolean isMisspeltFrom(Called thing) {
        return thing.said().map(spoken::form).anyMatch(this::isMisspelt);
    }

    boolean isMisspelt(String form) {
        return slipped(letters, form);
    }

    int distance(String form) {
        return Near.distance(letters, form);
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
        double byLetters = byLetters(letters, form);
        List<String> words = words(label);
        double byWords = SHARE_OF_SAID * found(said, words) + (1 - SHARE_OF_SAID) * found(words, said);
        return Math.max(byLetters >= ALIKE ? byLetters : 0, byWords);
    }

    /** Of the first words, how far each is found among the others. */
    private double found(List<String> words, List<String> among) {
        double all = words.stream().mapToDouble(this::weight).sum();
        return all == 0 ? 0 : words.stream().mapToDouble(w -> weight(w) * among.stream().mapToDouble(other -> alike(w, other)).max()
                .orElse(0)).sum() / all;
    }

    private double weight(String word) {
        return idle.contains(word) ? IDLE : 1;
    }

    private double foundWhole(List<String> among) {
        double all = said.stream().mapToDouble(this::weight).sum();
        return said.stream().mapToDouble(w -> among.contains(w) ? weight(w) : 0).sum() / all;
    }

    private static double alike(String one, String other) {
        if (one.equals(other)) {
            return 1;
        }
        boolean begins = Math.min(one.length(), other.length()) >= BEGINNING && (one.startsWith(other) || other.startsWith(one));
        double slip = slipped(one, other) ? byLetters(one, other) : 0;
        return begins ? Math.max(BEGINS, slip) : slip;
    }

    private static double byLetters(String one, String other) {
        return 1 - (double) Near.distance(one, other) / Math.max(one.length(), other.length());
    }

    private static boolean slipped(String one, String other) {
        int longer = Math.max(one.length(), other.length());
        int slips = longer < ONE_SLIP ? 0 : longer < TWO_SLIPS ? 1 : 2;
        return Math.abs(one.length() - other.length()) <= slips && Near.distance(one, other) <= slips;
    }
}
