package rungwise.shoplog;

import java.util.List;
import rungwise.question.Problem;

/** An attempt that can be read but not kept; every problem found is named. */
public final class BadAttempt extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public BadAttempt(List<Problem> problems) {
        super(String.join("\n", problems.stream().map(Problem::toString).toList()));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }
}
