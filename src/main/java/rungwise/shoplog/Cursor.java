package rungwise.shoplog;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A place in the log, written so that nobody counts on what is in it.
 *
 * @param after the last attempt already seen; 0 = none
 */
public record Cursor(long after) {
    static final Cursor START = new Cursor(0);
    private static final Pattern FORM = Pattern.compile("a(\\d{1,18})");

    public String text() {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(("a" + after).getBytes(StandardCharsets.US_ASCII));
    }

    /** The place, or nothing where the text is not a cursor of this program. */
    public static Optional<Cursor> of(String text) {
        try {
            var form = FORM.matcher(new String(Base64.getUrlDecoder().decode(text), StandardCharsets.US_ASCII));
            return form.matches() ? Optional.of(new Cursor(Long.parseLong(form.group(1)))) : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
