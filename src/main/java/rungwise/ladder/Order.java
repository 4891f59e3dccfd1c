package rungwise.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rungwise.knowledge.method.Method;
import rungwise.rules.Phase;
import rungwise.rules.said.Bar;
import rungwise.rules.said.Because;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusions;
import rungwise.rules.said.Pushes;
import rungwise.rules.use.Earlier;
import rungwise.rules.use.Permitted;
import rungwise.text.Figure;

/**
 * The fixed order of what is permitted, gentlest first. A method stands by its own key, or by that of another that the rules put
 * before it. It holds no belief, no minutes and no log.
 */
final class Order {
    private static final Comparator<Choice> BY_KEY = Comparator.comparing(Choice::carried)
            .thenComparingInt(Choice::depth).thenComparing(Choice::own);

    private final Sequence sequence;
    private final Map<String, Method> methods;
    private final Map<String, List<Concluded<Pushes>>> pushes;
    private final List<Concluded<Bar>> bars;

    private Order(Revision revision, Conclusions said) {
        this.sequence = revision.sequence();
        this.methods = revision.base().methods();
        this.bars = said.of(Bar.class);
        this.pushes = said.of(Pushes.class).stream().collect(Collectors.groupingBy(p -> p.conclusion().later()));
    }

    /** Asks the rules how these stand to one another on this spot. */
    static Order among(Revision revision, Situation situation, List<Choice> able) {
        List<Object> facts = new ArrayList<>(List.of(revision.base().decisions()));
        situation.suspects().forEach(s -> facts.add(s.deposit()));
        Set<String> ids = able.stream().map(Choice::id).collect(Collectors.toSet());
        for (Choice choice : able) {
            facts.add(new Permitted(choice.use(), choice.severity(), -choice.own().minusPriorHardened(), choice.asks()));
            revision.sequence().earlierThan(choice.id()).keySet().stream().filter(ids::contains)
                    .forEach(first -> facts.add(new Earlier(first, choice.id())));
        }
        return new Order(revision, revision.book().run(Phase.ORDER, facts));
    }

    /** What the ladder as a whole leaves without what it needs. */
    List<Concluded<Bar>> bars() {
        return bars;
    }

    /**
     * These in their order.
     *
     * @param pushing ids of those that may move another back; no log has a say in which these are
     */
    List<Choice> of(List<Choice> choices, Set<String> pushing) {
        Map<String, Choice> byId = new LinkedHashMap<>();
        choices.forEach(c -> byId.put(c.id(), c));
        Map<String, Choice> done = new HashMap<>();
        for (Choice choice : choices) {
            carry(choice, byId, pushing, done, new HashSet<>());
        }
        List<Choice> ordered = new ArrayList<>(done.values());
        ordered.sort(BY_KEY);
        return ordered;
    }

    private Choice carry(Choice choice, Map<String, Choice> byId, Set<String> pushing, Map<String, Choice> done, Set<String> above) {
        Choice known = done.get(choice.id());
        if (known != null) {
            return known;
        }
        above.add(choice.id());
        Key largest = choice.own();
        int depth = 0;
        List<Because> reasons = new ArrayList<>();
        for (Concluded<Pushes> push : pushes.getOrDefault(choice.id(), List.of())) {
            Choice first = pushing.contains(push.conclusion().first()) ? byId.get(push.conclusion().first()) : null;
            if (first == null || above.contains(first.id())) {
                continue;
            }
            Key carried = push.conclusion().waits() ? first.own() : carry(first, byId, pushing, done, above).carried();
            int behind = push.conclusion().waits() ? 1 : done.get(first.id()).depth() + 1;
            int compared = carried.compareTo(largest);
            if (!push.conclusion().waits() || compared > 0) {
                reasons.addAll(reasons(push, first));
            }
            if (compared > 0) {
                largest = carried;
                depth = behind;
            } else if (compared == 0) {
                depth = Math.max(depth, behind);
            }
        }
        above.remove(choice.id());
        Choice carried = choice.carrying(largest, depth, reasons);
        done.put(choice.id(), carried);
        return carried;
    }

    /** The rule that puts one before the other: of everywhere, naming the one that is waited for, or of this spot, which names it itself. */
    private List<Because> reasons(Concluded<Pushes> push, Choice first) {
        List<Because> everywhere = sequence.earlierThan(push.conclusion().later()).getOrDefault(first.id(), List.of());
        return List.of(push.conclusion().waits() || everywhere.isEmpty() ? push.because() : new Because(everywhere.get(0).reason(),
                List.of(Figure.of("waitsFor", methods.get(first.id()).name())), everywhere.get(0).sources()));
    }
}
