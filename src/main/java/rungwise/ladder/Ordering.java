package rungwise.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungwise.rules.Because;

/** Puts permitted methods in their fixed order, gentlest first. */
final class Ordering {
    private static final Comparator<Choice> ORDER = Comparator.comparing(Choice::carried)
            .thenComparingInt(Choice::depth).thenComparing(Choice::own);
    /** Chemistry above this grade does not push what comes after it. */
    private static final int PUSHES_TO_GRADE = 5;
    /** A slow method gives way to a likelier one up to this many grades harsher. */
    private static final int SLOW_GIVES_WAY = 2;

    private final Sequence sequence;

    Ordering(Sequence sequence) {
        this.sequence = sequence;
    }

    List<Choice> of(List<Choice> permitted) {
        Map<String, Choice> byId = new HashMap<>();
        permitted.forEach(c -> byId.put(c.id(), c));
        Map<String, Choice> done = new HashMap<>();
        for (Choice choice : permitted) {
            carry(choice, byId, done);
        }
        List<Choice> ordered = new ArrayList<>(done.values());
        ordered.sort(ORDER);
        return ordered;
    }

    private Choice carry(Choice choice, Map<String, Choice> byId, Map<String, Choice> done) {
        Choice known = done.get(choice.id());
        if (known != null) {
            return known;
        }
        Key largest = choice.own();
        int depth = 0;
        List<Because> reasons = new ArrayList<>();
        for (Map.Entry<String, List<Because>> earlier : sequence.earlierThan(choice.id()).entrySet()) {
            Choice first = byId.get(earlier.getKey());
            if (first == null || first.severity().chemical() > PUSHES_TO_GRADE || first.asks() || first.takesFilm()) {
                continue;
            }
            Choice carriedFirst = carry(first, byId, done);
            reasons.addAll(earlier.getValue().subList(0, 1));
            int compared = carriedFirst.carried().compareTo(largest);
            if (compared > 0) {
                largest = carriedFirst.carried();
                depth = carriedFirst.depth() + 1;
            } else if (compared == 0) {
                depth = Math.max(depth, carriedFirst.depth() + 1);
            }
        }
        if (choice.isSlow()) {
            for (Choice other : byId.values()) {
                if (!other.isSlow() && other.ifHardened() > choice.ifHardened() && !other.takesFilm()
                        && other.severity().worst() <= choice.severity().worst() + SLOW_GIVES_WAY
                        && other.own().compareTo(largest) > 0) {
                    largest = other.own();
                    depth = 1;
                }
            }
        }
        Choice carried = choice.carrying(largest, depth, reasons.stream().distinct().sorted(
                Comparator.comparing(Because::id).thenComparing(b -> b.figures().toString())).toList());
        done.put(choice.id(), carried);
        return carried;
    }
}
