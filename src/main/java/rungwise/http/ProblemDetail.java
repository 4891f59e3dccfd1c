package rungwise.http;

import java.util.List;
import rungwise.ladder.Problem;

/** RFC 9457: what went wrong, why, and what to do next. */
record ProblemDetail(String type, String title, int status, String detail, String instance, List<Problem> errors) {
    static final String MEDIA_TYPE = "application/problem+json";

    static ProblemDetail of(int status, String title, String detail, String instance) {
        return new ProblemDetail("about:blank", title, status, detail, instance, List.of());
    }
}
