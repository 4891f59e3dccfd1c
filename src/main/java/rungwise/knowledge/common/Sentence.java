package rungwise.knowledge.common;

import java.util.Locale;

/** Names within a sentence, and how one begins. */
public final class Sentence {
    private Sentence() {
    }

    /** With a small first letter. */
    public static String within(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }

    /** With a capital. */
    public static String begun(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
