package rungwise.laws;

import java.util.List;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.answer.LadderAnswer;
import rungwise.knowledge.method.Gate;

/** Answers made wrong on purpose. */
final class Law {
    /** Every gate that somebody can agree to. */
    static final List<String> AGREEMENTS = Base.advisor().knowledge().gates().values().stream().filter(Gate::needsAgreement)
            .map(Gate::id).toList();
    private static final Answer.State STOPPED = new Answer.State(0, 0, 0);

    private Law() {
    }

    static Answer with(Answer answer, List<Answer.Rung> rungs) {
        LadderAnswer a = answer.ladder().orElseThrow();
        return new LadderAnswer(a.revision(), a.question(), a.facts(), a.mark(), a.assumed(), a.belief(), a.before(), rungs,
                a.alternatives(), a.passedOver(), a.never(), a.notNow(), a.usedUp(), a.neighbours(), a.after(), a.wayOut(), a.next(),
                a.expected(), a.advice(), a.reasons());
    }

    /** Belief in the state of the deposit; none of either where work is stopped before any ladder. */
    static Answer.State belief(Answer answer) {
        return answer.ladder().map(LadderAnswer::belief).orElse(STOPPED);
    }

    static Answer.Rung with(Answer.Rung r, String method, List<Answer.Ppe> ppe, List<Answer.GateState> gates,
                            List<rungwise.rules.said.Because> because) {
        return new Answer.Rung(r.rank(), r.visit(), method, r.name(), r.severity(), r.chance(), r.minutes(), r.agent(),
                r.dwell(), r.staysWet(), r.window(), r.pressureBar(), r.tool(), r.technique(), r.parts(), r.tries(), r.level(),
                r.stopSigns(), r.risks(), ppe, gates, r.waste(), r.bridgeBefore(), r.ifCleared(), r.ifMarked(), because);
    }
}
