package rungwise.lint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Inspection;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.text.Texts;

/** A method that no reference ladder ever names, even where it alone is on the shelf. */
final class UnusedMethod implements LadderCheck {
    /** Kept to be recognised and refused. */
    private static final String REFUSED = "barred_chemistry";

    @Override
    public List<Finding> findings(Probes probes) {
        KnowledgeBase known = probes.known();
        Set<String> used = new TreeSet<>();
        probes.plain().forEach(p -> add(p, used));
        known.methods().values().forEach(m -> used.addAll(m.correction()));
        known.contaminants().values().forEach(c -> c.refersTo().ifPresent(used::add));
        known.contaminants().values().forEach(c -> c.emergency().ifPresent(e -> used.add(e.method())));
        known.surfaces().values().forEach(s -> used.add(s.wayOut()));
        known.signs().checks().values().stream().map(Inspection::method).forEach(m -> m.ifPresent(used::add));
        List<Finding> found = new ArrayList<>();
        for (Method method : known.methods().values()) {
            if (!used.contains(method.id()) && !method.family().equals(REFUSED) && !aloneItHelps(probes, method)) {
                found.add(Finding.of("methods", method.id(), "", method.kind() == MethodKind.REMOVE
                                ? Texts.said("lint.unused-remover")
                                : Texts.said("lint.unused-step"),
                        Texts.said("lint.unused.do")));
            }
        }
        return found;
    }

    private static void add(Probe probe, Set<String> used) {
        probe.rungs().forEach(rung -> {
            used.add(rung.method());
            rung.bridgeBefore().forEach(b -> used.addAll(b.steps()));
            rung.ifCleared().forEach(s -> used.add(s.step()));
            rung.ifMarked().forEach(s -> used.add(s.step()));
        });
        Answer answer = probe.answer();
        answer.before().forEach(s -> used.add(s.step()));
        answer.after().forEach(s -> used.add(s.step()));
        answer.next().method().ifPresent(used::add);
        answer.whoTakesOver().ifPresent(w -> used.add(w.method()));
    }

    /** A rung loses to a likelier one of its family as long as both are at hand. */
    private static boolean aloneItHelps(Probes probes, Method method) {
        if (method.kind() != MethodKind.REMOVE) {
            return false;
        }
        return probes.asked().stream()
                .filter(c -> best(c.chances(method)).compareTo(Chance.P) >= 0)
                .sorted(Comparator.comparing((Contaminant c) -> best(c.chances(method))).reversed())
                .anyMatch(c -> surfaces(probes, c, method).stream().anyMatch(s -> Stream.of(
                        Probe.Age.FRESH, Probe.Age.HARDENED).anyMatch(age -> probes.ask(c, s, age,
                        probes.alone(method)).rungs().anyMatch(r -> r.method().equals(method.id())))));
    }

    /** Where it is usually met, unless the method is barred there. */
    private static List<String> surfaces(Probes probes, Contaminant contaminant, Method method) {
        return contaminant.usualSurfaces().stream()
                .filter(s -> probes.advisor().barsOn(s, method.id()).isEmpty()).toList();
    }

    private static Chance best(Chances chances) {
        return chances.fresh().compareTo(chances.hardened()) > 0 ? chances.fresh() : chances.hardened();
    }
}
