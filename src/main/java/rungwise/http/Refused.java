package rungwise.http;

import java.util.List;
import rungwise.question.PlainText;
import rungwise.text.Texts;

/** Ends a request with a problem. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Kind kind;
    private final String remedy;
    private final transient List<Refusal.Entry> entries;

    Refused(Kind kind, String detail, String remedy, List<Refusal.Entry> entries) {
        super(detail, null, false, false);
        this.kind = kind;
        this.remedy = remedy;
        this.entries = entries;
    }

    Refused(Kind kind, String detail, List<Refusal.Entry> entries) {
        this(kind, detail, kind.remedy(), entries);
    }

    Refused(Kind kind, String detail) {
        this(kind, detail, List.of());
    }

    /**
     * One whose sentence stands in the message file, and beside it what to do where the kind alone does not say it.
     *
     * @param id    of the sentence
     * @param named name and value by turns
     */
    static Refused said(Kind kind, String id, Object... named) {
        Object[] shown = PlainText.named(named);
        String remedy = "refusal." + id + ".do";
        return new Refused(kind, Texts.said("refusal." + id, shown), Texts.chosen().has(remedy) ? Texts.said(remedy, shown) : kind.remedy(),
                List.of());
    }

    Refusal at(String instance) {
        return Refusal.of(kind, getMessage(), remedy, instance).with(entries);
    }
}
