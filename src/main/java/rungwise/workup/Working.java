package rungwise.workup;

import java.util.ArrayList;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Sentence;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Tool;
import rungwise.rules.said.Because;
import rungwise.rules.said.Reason;
import rungwise.rules.use.Use;
import rungwise.text.Figure;

/** Why a method can take a deposit off: what its way of working does, and what holds the deposit. */
public final class Working {
    private Working() {
    }

    /**
     * The reason, with the names that its sentence asks for.
     *
     * @param bond how the deposit holds now
     */
    public static Because of(KnowledgeBase base, Use use, Contaminant deposit, String bond) {
        List<Figure> figures = new ArrayList<>();
        if (!use.agent().equals(Agent.NONE)) {
            figures.add(Figure.of("agent", use.agent().name()));
        }
        if (!use.tool().equals(Tool.NONE)) {
            figures.add(Figure.of("tool", Sentence.within(use.tool().name())));
        }
        figures.add(Figure.of("deposit", Sentence.within(deposit.name())));
        figures.add(Figure.of("holds", base.bondClasses().get(bond).holds()));
        return Because.of(Reason.mechanism(base.mechanismOf(use.method())), figures);
    }
}
