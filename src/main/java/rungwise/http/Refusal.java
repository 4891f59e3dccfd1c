package rungwise.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import rungwise.question.Choice;
import rungwise.question.PlainText;
import rungwise.question.Problem;

/**
 * A problem as RFC 9457 writes it, and what to do.
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
record Refusal(String type, String title, int status, String detail, String remedy, String instance, List<Entry> errors) {
    static final String MEDIA_TYPE = "application/problem+json";

    Refusal {
        // what was sent may stand in it, and whoever reads it may read it on a terminal
        detail = PlainText.shown(detail);
        remedy = PlainText.shown(remedy);
        instance = PlainText.shown(instance);
    }

    /**
     * One thing that is wrong.
     *
     * @param pointer JSON Pointer into the body; the empty pointer is the whole body, so it is never left out
     * @param choices what may have been meant, with how to tell them apart
     */
    record Entry(@JsonInclude(JsonInclude.Include.ALWAYS) String pointer, String detail, String remedy,
                 @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Choice> choices) {
        static Entry of(Problem problem) {
            return new Entry(problem.pointer(), problem.wrong(), problem.remedy(), problem.choices());
        }
    }

    static Refusal of(Kind kind, String detail, String instance) {
        return of(kind, detail, kind.remedy(), instance);
    }

    static Refusal of(Kind kind, String detail, String remedy, String instance) {
        return new Refusal("/problems/" + kind.id(), kind.title(), kind.status(), detail, remedy, instance, List.of());
    }

    Refusal with(List<Entry> entries) {
        return new Refusal(type, title, status, detail, remedy, instance, List.copyOf(entries));
    }

    Refusal as(int otherStatus) {
        return new Refusal(type, title, otherStatus, detail, remedy, instance, errors);
    }
}
