package rungwise.laws;

import java.util.List;
import rungwise.ladder.Answer;

/** Answers made wrong on purpose. */
final class Law {
    private Law() {
    }

    static Answer with(Answer a, List<Answer.Rung> rungs) {
        return new Answer(a.revision(), a.question(), a.assumed(), a.hold(), a.belief(), a.before(), rungs,
                a.alternatives(), a.passedOver(), a.barred(), a.neighbours(), a.after(), a.wayOut(), a.next(),
                a.expected(), a.advice());
    }
}
