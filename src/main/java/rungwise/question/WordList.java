package rungwise.question;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.regex.Pattern;
import rungwise.knowledge.common.Listed;
import rungwise.text.Near;

/**
 * The words that may stand in one place, each by its id, its name or another way to say it. Case, hyphens and underscores
 * make no difference.
 *
 * @param idByLabel every way to say a word, in plain form, with the id that it means
 */
record WordList(Map<String, String> idByLabel) {
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final int NEAREST = 3;
    /** So many words are shown whole; of more only the nearest. */
    private static final int SHOWN_WHOLE = 12;

    WordList {
        idByLabel = new LinkedHashMap<>(idByLabel);
    }

    static WordList of(Collection<? extends Listed> words) {
        Map<String, String> idByLabel = new LinkedHashMap<>();
        words.forEach(w -> idByLabel.put(plain(w.id()), w.id()));
        words.forEach(w -> {
            idByLabel.putIfAbsent(plain(w.name()), w.id());
            w.alsoCalled().forEach(other -> idByLabel.putIfAbsent(plain(other), w.id()));
        });
        return new WordList(idByLabel);
    }

    static WordList ofIds(Collection<String> ids) {
        Map<String, String> idByLabel = new LinkedHashMap<>();
        ids.forEach(id -> idByLabel.put(plain(id), id));
        return new WordList(idByLabel);
    }

    /** These words, and those of another list where this one has none. */
    WordList and(WordList other) {
        Map<String, String> both = new LinkedHashMap<>(idByLabel);
        other.idByLabel.forEach(both::putIfAbsent);
        return new WordList(both);
    }

    /** These words, of which some may also be said otherwise: labels with the ids that they mean. */
    WordList alsoSaid(List<Map.Entry<String, String>> labels) {
        Map<String, String> more = new LinkedHashMap<>(idByLabel);
        labels.forEach(l -> more.putIfAbsent(plain(l.getKey()), l.getValue()));
        return new WordList(more);
    }

    Optional<String> id(String word) {
        return Optional.ofNullable(idByLabel.get(plain(word)));
    }

    Set<String> ids() {
        return new LinkedHashSet<>(idByLabel.values());
    }

    /** What is wrong with a word that this list does not hold, and which words are nearest. */
    Problem problem(String pointer, String word) {
        Set<String> ids = ids();
        String near = String.join(", ", nearest(word));
        return Problem.said(pointer, ids.size() <= NEAREST ? "no-word-of-few" : ids.size() <= SHOWN_WHOLE ? "no-word" : "no-word-of-many",
                "word", word, "near", near, "words", String.join(", ", ids));
    }

    /** The three ids nearest to a word, by any way to say them. */
    List<String> nearest(String word) {
        String said = plain(word);
        ToIntFunction<Map.Entry<String, String>> far = e -> distance(said, e.getKey());
        return idByLabel.entrySet().stream().sorted(Comparator.comparingInt(far).thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getValue).distinct().limit(NEAREST).toList();
    }

    /** Letters that differ; a label that is part of what was said, or the other way round, is nearer than any other. */
    private static int distance(String said, String label) {
        boolean part = said.length() > 2 && label.length() > 2
                && ((" " + said + " ").contains(" " + label + " ") || (" " + label + " ").contains(" " + said + " "));
        return part ? 0 : Near.distance(said, label);
    }

    /** Lower case, one space between what letters and digits make up. */
    static String plain(String word) {
        return BETWEEN.matcher(word.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }
}
