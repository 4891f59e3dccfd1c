package rungwise.http;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A strong entity tag: the revision of knowledge and rules, and a digest of the body itself. */
record Tag(String text) {
    private static final Pattern ONE = Pattern.compile("(?:W/)?(\"[^\"]*\")");
    private static final int DIGEST_BYTES = 8;

    /** The revision alone would not do: another version of the program can write the same knowledge otherwise. */
    static Tag of(String revision, byte[] body) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(body);
            return new Tag(revision + "-" + HexFormat.of().formatHex(digest, 0, DIGEST_BYTES));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** As the header ETag wants it. */
    String quoted() {
        return "\"" + text + "\"";
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
