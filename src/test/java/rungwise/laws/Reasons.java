package rungwise.laws;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Method;
import rungwise.rules.Phase;
import rungwise.rules.RuleBook;
import rungwise.rules.said.Because;

/** What is wrong with the reasons of an answer: they lead nowhere, they are not there, or they lean on what is not offered. */
final class Reasons {
    /** Decisions that move a rung behind another one. */
    private static final Set<String> ORDERING = Set.of("decisions/slow-gives-way", "decisions/pushes-up-to");
    private static final Set<String> FOUND = found(Base.advisor().knowledge(), Base.advisor().rules());
    private static final Set<String> OF_ORDER = Base.advisor().rules().rules().values().stream()
            .filter(r -> r.phase().equals(Phase.ORDER.group())).map(r -> "rules/" + r.id()).collect(Collectors.toSet());

    private static final Map<String, List<String>> DONE_BY = Base.advisor().knowledge().methods().values().stream()
            .filter(m -> m.doneBy().isPresent()).collect(Collectors.groupingBy(m -> m.doneBy().get(),
                    Collectors.mapping(Method::id, Collectors.toList())));

    private Reasons() {
    }

    /** Every path below /v1/ behind which there is an entry. */
    private static Set<String> found(KnowledgeBase base, RuleBook book) {
        Map<String, Set<String>> collections = Map.of("rules", book.rules().keySet(), "decisions", base.decisions().byId().keySet(),
                "assumptions", base.assumptions().byId().keySet(), "contaminants", base.contaminants().keySet(),
                "surfaces", base.surfaces().keySet(), "methods", base.methods().keySet(), "agents", base.agents().keySet(),
                "tools", base.tools().keySet(), "gates", base.gates().keySet(), "mechanisms", base.mechanisms().keySet());
        Set<String> found = new HashSet<>();
        collections.forEach((collection, ids) -> ids.forEach(id -> found.add(collection + "/" + id)));
        return found;
    }

    /** Reasons behind whose id there is nothing. */
    static List<String> unresolved(Placed answer) {
        Set<String> nowhere = new TreeSet<>();
        answer.said().forEach(s -> s.because().stream().map(Because::id).filter(id -> !FOUND.contains(id)).forEach(nowhere::add));
        return List.copyOf(nowhere);
    }

    /**
     * Rungs that are sorted by another key than their own. Marring and prior of the key are not worked out again: where they
     * alone were another's, so would be the method at its end.
     */
    static List<Placed.Offer> moved(Placed answer) {
        return answer.rungs().stream().filter(r -> !isOwn(r)).toList();
    }

    private static boolean isOwn(Placed.Offer rung) {
        Placed.Grades g = rung.grades();
        List<Object> own = List.of(g.filmMicrons() >= 0.3, Math.max(g.mechanical(), Math.max(g.chemical(), g.thermal())), g.chemical(),
                g.mechanical(), g.thermal(), g.filmMicrons());
        return owner(rung).equals(rung.method()) && rung.key().subList(0, own.size()).equals(own);
    }

    /** A rule of the order, or a decision that moves a rung behind another. */
    static boolean isOfOrder(Because because) {
        return OF_ORDER.contains(because.id()) || ORDERING.contains(because.id());
    }

    /** The method whose key it is. */
    static String owner(Placed.Offer rung) {
        return rung.key().get(rung.key().size() - 1).toString();
    }

    /**
     * Rungs that wait for another one and do not say for which. It is said by a reason of order that names that one alone:
     * the method whose key it is, or one that waits for the same.
     */
    static List<String> silentWaits(Placed answer) {
        List<String> silent = new ArrayList<>();
        for (Placed.Offer rung : moved(answer)) {
            String owner = owner(rung);
            Set<String> waitsAlike = answer.offered().filter(o -> owner(o).equals(owner)).map(Placed.Offer::method)
                    .collect(Collectors.toSet());
            waitsAlike.add(owner);
            boolean said = rung.because().stream().filter(Reasons::isOfOrder).anyMatch(b -> {
                Set<String> named = Placed.named(b);
                named.remove(rung.method());
                return named.size() == 1 && waitsAlike.containsAll(named);
            });
            if (!said) {
                silent.add(rung.method() + " waits for " + owner + " and does not say so");
            }
        }
        return silent;
    }

    /** Methods left out for the sake of another of the same, with that other. */
    static List<Placed.Left> again(Placed answer) {
        return answer.left().stream().filter(l -> l.place() == Placed.Place.PASSED_OVER && l.step().equals("same-again")).toList();
    }

    /** Methods left out for the sake of one that nobody is offered, nobody tried and nobody did as preparation. */
    static List<String> absentTwins(Placed answer) {
        Set<String> offered = answer.rungs().stream().map(Placed.Offer::method).collect(Collectors.toSet());
        answer.question().tried().forEach(t -> t.method().ifPresent(offered::add));
        answer.question().done().forEach(d -> offered.addAll(DONE_BY.getOrDefault(d, List.of())));
        List<String> absent = new ArrayList<>();
        for (Placed.Left left : again(answer)) {
            Set<String> twins = new TreeSet<>();
            left.because().forEach(b -> twins.addAll(Placed.named(b)));
            twins.remove(left.method());
            if (twins.size() != 1) {
                absent.add(left.method() + " is the same as " + (twins.isEmpty() ? "nothing that is named" : "all of " + twins));
            } else if (!offered.containsAll(twins)) {
                absent.add(left.method() + " is left out for " + twins.iterator().next());
            }
        }
        return absent;
    }
}
