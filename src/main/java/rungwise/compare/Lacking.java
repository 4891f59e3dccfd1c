package rungwise.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.method.Method;
import rungwise.question.Question;
import rungwise.question.Shelf;

/**
 * What a named shelf lacks for one method each. Whether the method is gentler or likelier than the next step is left to
 * the ladder, which also knows what is slow or held up; here only the number tried is kept small.
 */
final class Lacking {
    /** Things tried at most, so that a bare shelf does not take long. */
    static final int TRIED_AT_MOST = 24;

    private Lacking() {
    }

    /** A method that could be had: how likely it is, and whether a full shelf would have it as a rung. */
    private record Could(Method method, double chance, boolean rung) {
    }

    /**
     * Agents or tools to try on the shelf, one at a time; two together where one method needs both.
     *
     * @param whole the answer with everything known at hand
     */
    static List<List<String>> of(Question question, Answer whole, KnowledgeBase base) {
        Shelf shelf = new Shelf(question, base);
        Map<List<String>, Could> first = new LinkedHashMap<>();
        could(whole, base).stream().sorted(Comparator.comparing((Could c) -> shelf.lacks(c.method()).size())
                        .thenComparing(c -> !c.rung())
                        .thenComparing(c -> -c.chance()).thenComparing(c -> c.method().id()))
                .forEach(c -> first.putIfAbsent(shelf.lacks(c.method()), c));
        first.remove(List.<String>of());
        return first.keySet().stream().limit(TRIED_AT_MOST).toList();
    }

    private static List<Could> could(Answer whole, KnowledgeBase base) {
        List<Could> could = new ArrayList<>();
        whole.rungs().forEach(r -> could.add(new Could(base.methods().get(r.method()), r.chance().mean(), true)));
        whole.alternatives().forEach(a -> could.add(new Could(base.methods().get(a.method()), a.rung().chance().mean(), false)));
        double pointless = base.decisions().value(DecisionId.POINTLESS);
        whole.passedOver().stream().filter(p -> p.chance() >= pointless)
                .forEach(p -> could.add(new Could(base.methods().get(p.method()), p.chance(), false)));
        return could;
    }
}
