package rungwise.knowledge;

import java.util.Locale;

/** Names as they stand within a sentence. */
public final class Sentence {
    private Sentence() {
    }

    /** With a small first letter. */
    public static String within(String name) {
        return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
    }
}
