package rungwise.knowledge.method;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.common.Basis;

/**
 * What must be true or obtained before a method may be used.
 *
 * @param kind      consent = the customer's; supervision = a supervisor's; preparation = what the worker does first;
 *                  fact = a question that somebody answers
 * @param obtain    what to get or do
 * @param agrees    what is agreed on, where several agreements stand in one line
 * @param turn      when it is met among what comes before the work, the lower the sooner; 0 = as agreements are
 * @param otherwise what happens if it is refused or cannot be had
 * @param first     it keeps people from harm and is met before anything else is touched
 * @param opens     what else opens it, beside being granted or done
 */
public record Gate(String id, String name, GateKind kind, String obtain, String agrees, int turn, String otherwise, boolean first, Opens opens, Basis basis,
                   List<String> sources) {
    /** Who opens a gate. */
    public enum GateKind { CONSENT, SUPERVISION, PREPARATION, FACT }

    /** After the vehicle is photographed and measured, before anything is taped or tried. */
    private static final int AGREEMENTS = 40;

    public Gate {
        agrees = agrees == null ? "" : agrees;
        turn = turn == 0 ? AGREEMENTS : turn;
        otherwise = otherwise == null ? "" : otherwise;
        opens = opens == null ? Opens.NOTHING : opens;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /**
     * Any one of these opens the gate.
     *
     * @param facts            facts of which one is given
     * @param done             word by which a question says that the preparation was done
     * @param testPassed       whether a hidden test spot of this very method passed
     * @param airChangesPerHour air changes in the bay, from which the air counts as moving
     * @param level            staff level on the job, from which nobody else has to agree
     * @param withinWindow     whether a panel measured within the method's own temperatures is enough
     */
    public record Opens(List<String> facts, Optional<String> done, boolean testPassed,
                        Optional<Double> airChangesPerHour, Optional<String> level, boolean withinWindow) {
        static final Opens NOTHING = new Opens(List.of(), Optional.empty(), false, Optional.empty(), Optional.empty(),
                false);

        public Opens {
            facts = facts == null ? List.of() : List.copyOf(facts);
            done = done == null ? Optional.empty() : done;
            airChangesPerHour = airChangesPerHour == null ? Optional.empty() : airChangesPerHour;
            level = level == null ? Optional.empty() : level;
        }
    }

    /** Whether somebody other than the worker has to agree. */
    public boolean needsAgreement() {
        return kind == GateKind.CONSENT || kind == GateKind.SUPERVISION;
    }

    /** Whether an answer opens it, rather than work or an agreement. */
    public boolean asks() {
        return kind == GateKind.FACT;
    }
}
