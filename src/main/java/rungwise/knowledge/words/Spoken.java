package rungwise.knowledge.words;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * When two ways to say something are the same: case, hyphens, spaces, plurals and the spelling of either side of the ocean
 * make no difference.
 */
public final class Spoken {
    /** Words are not cut shorter: "gas" and "tie" are no plurals of anything. */
    private static final int SHORTEST = 3;
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");

    private final Map<String, String> spellings = new HashMap<>();

    public Spoken(Collection<Spelling> spellings) {
        spellings.forEach(s -> s.alsoCalled().forEach(other -> this.spellings.put(singular(other), singular(s.id()))));
    }

    /** What two ways to say the same have in common. */
    public String form(String said) {
        return String.join("", words(said));
    }

    /** The same, word by word. */
    public List<String> words(String said) {
        return Stream.of(BETWEEN.split(said.toLowerCase(Locale.ROOT))).filter(w -> !w.isEmpty()).map(Spoken::singular)
                .map(w -> spellings.getOrDefault(w, w)).toList();
    }

    /** Without its ending: "lens" and "lenses", "grease" and "greases", "glass" and "glasses" come out alike, which is all that counts. */
    private static String singular(String word) {
        if (word.length() > SHORTEST + 1 && word.endsWith("ies")) {
            return word.substring(0, word.length() - SHORTEST) + "y";
        }
        String cut = word;
        while (cut.length() > SHORTEST && (cut.endsWith("e") || cut.endsWith("s") && !cut.endsWith("ss"))) {
            cut = cut.substring(0, cut.length() - 1);
        }
        return cut;
    }
}
