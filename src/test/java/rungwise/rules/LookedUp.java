package rungwise.rules;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungwise.Base;

/** Whether a source can be found again: by an address, the number of a document, an edition, or a journal's volume and page. */
final class LookedUp {
    private static final Pattern NUMBERED = Pattern.compile("\\b(\\d+ C[CF]R \\d|[A-Z]{2,4} \\d[\\d.]*-\\d|bulletin[ \\w]* \\d"
            + "|MMWR \\d|NFPA \\d|IEC \\d|EPA \\d|Regulation \\d|\\d+(st|nd|rd|th) ed\\.|IV/20|[A-Za-z] \\d{2}, \\d{3,5}\\b)|^\\d{2}, \\d{3}$");

    private LookedUp() {
    }

    static boolean can(String id) {
        var source = Base.advisor().knowledge().sources().get(id);
        return !source.url().isBlank() || Stream.of(source.title(), source.section()).anyMatch(s -> NUMBERED.matcher(s).find());
    }
}
