package rungwise.question;

import java.util.List;

/** A question that can be read but not answered; every problem found is named. */
public final class BadQuestion extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public BadQuestion(List<Problem> problems) {
        super(String.join("\n", problems.stream().map(Problem::toString).toList()));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }
}
