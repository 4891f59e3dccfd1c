package rungwise.laws;

import java.util.Random;
import rungwise.question.Question;

/** Drawn questions for tests of other rooms. */
public final class Spots {
    private Spots() {
    }

    public static Question any(Random random) {
        return DrawnQuestions.drawn(random);
    }
}
