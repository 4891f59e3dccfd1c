package rungwise.http;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The strong entity tag of one revision of knowledge and rules. */
record Tag(String revision) {
    private static final Pattern ONE = Pattern.compile("(?:W/)?(\"[^\"]*\")");

    /** As the header ETag wants it. */
    String quoted() {
        return "\"" + revision + "\"";
    }

    /** Whether If-None-Match names this tag: alone, in a list, weak, or as a star. */
    boolean isIn(String ifNoneMatch) {
        if (ifNoneMatch == null) {
            return false;
        }
        if (ifNoneMatch.trim().equals("*")) {
            return true;
        }
        Matcher tags = ONE.matcher(ifNoneMatch);
        while (tags.find()) {
            if (tags.group(1).equals(quoted())) {
                return true;
            }
        }
        return false;
    }
}
