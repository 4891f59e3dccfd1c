package rungwise.question;

import java.util.ArrayList;
import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;

/** What a question says is at hand. */
public final class Shelf {
    private final Question question;
    private final KnowledgeBase base;

    public Shelf(Question question, KnowledgeBase base) {
        this.question = question;
        this.base = base;
    }

    /** The agent and the tool of a method that are not at hand; none of them where no shelf is named. */
    public List<String> lacks(Method method) {
        if (question.shelf().filter(s -> !s.contains(method.id())).isEmpty()) {
            return List.of();
        }
        List<String> shelf = question.shelf().get();
        List<String> lacks = new ArrayList<>();
        if (!method.agent().equals("none") && !shelf.contains(method.agent())
                && (question.shelfStrict() && !isForRinsing(method) || !base.agentOf(method).alwaysAtHand())) {
            lacks.add(method.agent());
        }
        if (!method.tool().equals("none") && !shelf.contains(method.tool())
                && (question.shelfStrict() || !base.toolOf(method).alwaysAtHand())) {
            lacks.add(method.tool());
        }
        return List.copyOf(lacks);
    }

    /** A bucket of water to take off what was put on is at every job, also where only what is named may be tried. */
    private static boolean isForRinsing(Method method) {
        return method.kind() == MethodKind.CLEAN_UP && method.takesAgentsOff();
    }
}
