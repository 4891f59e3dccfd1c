package rungwise.knowledge;

import java.util.Locale;

/** Numbers as a person writes them: no trailing zeros, at most two decimals. */
public final class Figures {
    private Figures() {
    }

    public static String text(double value) {
        if (Math.rint(value) == value && Math.abs(value) < 1e9) {
            return Long.toString((long) value);
        }
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
    }
}
