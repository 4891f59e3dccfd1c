package rungwise.http;

import java.util.List;
import rungwise.text.Texts;

/** Ends a request with a problem. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Kind kind;
    private final transient List<Refusal.Entry> entries;

    Refused(Kind kind, String detail, List<Refusal.Entry> entries) {
        super(detail, null, false, false);
        this.kind = kind;
        this.entries = entries;
    }

    Refused(Kind kind, String detail) {
        this(kind, detail, List.of());
    }

    /**
     * One whose sentence stands in the message file.
     *
     * @param id    of the sentence
     * @param named name and value by turns
     */
    static Refused said(Kind kind, String id, Object... named) {
        return new Refused(kind, Texts.said("refusal." + id, named));
    }

    Refusal at(String instance) {
        return Refusal.of(kind, getMessage(), instance).with(entries);
    }
}
