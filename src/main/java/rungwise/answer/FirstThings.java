package rungwise.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Gate;

/**
 * What comes before the work, always in one order: what keeps people from harm, the photograph, a wash, the gauge, what has to be
 * agreed, the tape, the hidden test, and last the water that wets the spot.
 */
final class FirstThings {
    private static final int SAFE = 0;
    private static final int BETWEEN = 15;
    private static final int WASHED = 20;
    private static final int WETTED = 70;

    private final KnowledgeBase base;
    private final List<Turn> turns = new ArrayList<>();

    private record Turn(int at, Answer.Due due) {
    }

    FirstThings(KnowledgeBase base) {
        this.base = base;
    }

    void keepPeopleSafe(Answer.Due due) {
        turns.add(new Turn(SAFE, due));
    }

    void rinseBetween(Answer.Due due) {
        turns.add(new Turn(BETWEEN, due));
    }

    void meet(Gate gate, Answer.Due due) {
        turns.add(new Turn(gate.turn(), due));
    }

    /** Preparation. Water that nothing rubs comes last: it would have dried again. What a gate asks for as well is said by the gate. */
    void prepare(List<Answer.Due> steps) {
        boolean washes = steps.stream().anyMatch(s -> isWet(s) && rubs(s));
        for (Answer.Due step : steps) {
            Optional<Gate> same = Optional.ofNullable(base.gates().get(step.step()));
            if (same.isEmpty() || turns.stream().noneMatch(t -> t.due().step().equals(step.step()))) {
                turns.add(new Turn(same.map(Gate::turn).orElse(isWet(step) && !washes ? WETTED : WASHED), step));
            }
        }
    }

    private boolean isWet(Answer.Due step) {
        return Optional.ofNullable(base.methods().get(step.step())).filter(m -> base.agentOf(m).isWet()).isPresent();
    }

    private boolean rubs(Answer.Due step) {
        return base.methods().get(step.step()).severity().mechanical() > 1;
    }

    List<Answer.Due> inOrder() {
        return turns.stream().sorted(Comparator.comparingInt(Turn::at)).map(Turn::due).toList();
    }
}
