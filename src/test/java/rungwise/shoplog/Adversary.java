package rungwise.shoplog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;
import rungwise.question.Question;

/** Writes logs that would move everything if they could: all harm, all cleared, old and fresh the wrong way round. */
public final class Adversary {
    private static final KnowledgeBase BASE = Base.advisor().knowledge();
    private static final List<String> CONTAMINANTS = List.copyOf(BASE.contaminants().keySet());
    private static final List<String> SURFACES = List.copyOf(BASE.surfaces().keySet());
    private static final List<String> METHODS = List.copyOf(BASE.methods().keySet());

    private Adversary() {
    }

    private static <T> T one(Random random, List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    static Attempt attempt(Random random) {
        return attempt(random, one(random, CONTAMINANTS), one(random, METHODS), one(random, List.of(Outcome.values())),
                random.nextBoolean() ? "P" + random.nextInt(400) + "D" : Question.UNKNOWN);
    }

    private static Attempt attempt(Random random, String contaminant, String method, Outcome outcome, String age) {
        return new Attempt(new java.util.UUID(random.nextLong(), random.nextLong()).toString(), Made.NOW, "yard",
                Optional.empty(), random.nextInt(4) == 0 ? Optional.of("s" + random.nextInt(30)) : Optional.empty(),
                contaminant, age, List.of(one(random, SURFACES)), Question.Facts.NONE, Question.Setting.UNKNOWN, method,
                Optional.empty(), List.of(), outcome, random.nextInt(8) > 0, OptionalDouble.of(0.5 + random.nextInt(60)), Optional.empty(),
                Optional.empty(), BASE.revision());
    }

    /**
     * What a hostile log teaches.
     *
     * @param about the deposit that it aims at
     */
    public static ChanceTable table(Random random, String about) {
        Learned learned = new Learned(BASE);
        int kind = random.nextInt(4);
        List<String> lifted = new ArrayList<>(METHODS);
        java.util.Collections.shuffle(lifted, random);
        List<String> liked = lifted.subList(0, lifted.size() / 2);
        long seq = 0;
        for (String method : METHODS) {
            for (int i = 0; i < 12; i++) {
                boolean old = random.nextBoolean();
                Outcome outcome = switch (kind) {
                    case 0 -> Outcome.HARM;
                    case 1 -> liked.contains(method) ? Outcome.CLEARED : Outcome.HARM;
                    case 2 -> old ? Outcome.CLEARED : Outcome.NO_CHANGE;
                    default -> one(random, List.of(Outcome.values()));
                };
                Tried tried = Tried.of(++seq, attempt(random, about, method, outcome, old ? "P4000D" : "PT1H"));
                for (int again = 0; again < 10; again++) {
                    learned.take(tried);
                }
            }
        }
        return learned.table();
    }
}
