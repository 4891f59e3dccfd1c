package rungwise.text;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import rungwise.knowledge.common.Sentence;
import rungwise.text.Texts;

/** Suggests known ids for one that does not exist. */
public final class Near {
    private Near() {
    }

    /** "did you mean …", or the way to find out where nothing is near. */
    public static String to(String id, Collection<String> known) {
        return orElse(id, known, Texts.said("near.known-id"));
    }

    /** "did you mean …", or what else to do where nothing is near. */
    public static String orElse(String id, Collection<String> known, String remedy) {
        String near = near(id, known);
        return near.isEmpty() ? remedy : near;
    }

    private static String near(String id, Collection<String> known) {
        List<String> near = known.stream().filter(k -> distance(id, k) <= Math.max(2, id.length() / 3))
                .sorted(Comparator.comparingInt((String k) -> distance(id, k)).thenComparing(k -> k)).limit(3).toList();
        return near.isEmpty() ? "" : Texts.said("near.did-you-mean", "near", String.join(", ", near));
    }

    /** What is near, if anything, and then all that there is, in a sentence that begins with what they are. */
    public static String among(String name, Collection<String> known, String theyAre) {
        String all = theyAre + " " + String.join(", ", known);
        String near = near(name, known);
        return near.isEmpty() ? all : near + " " + Sentence.begun(all);
    }

    /** Levenshtein's distance. */
    public static int distance(String one, String two) {
        int[] row = new int[two.length() + 1];
        for (int j = 0; j <= two.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= two.length(); j++) {
                int above = row[j];
                row[j] = Math.min(Math.min(row[j], row[j - 1]) + 1,
                        diagonal + (one.charAt(i - 1) == two.charAt(j - 1) ? 0 : 1));
                diagonal = above;
            }
        }
        return row[two.length()];
    }
}
