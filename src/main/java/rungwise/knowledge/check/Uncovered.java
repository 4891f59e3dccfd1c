package rungwise.knowledge.check;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Agent;
import rungwise.text.Texts;

/** Kinds of solvent that agents hold and a kind of entry says nothing of. */
final class Uncovered {
    private Uncovered() {
    }

    static List<Fault> faults(Draft draft, Kind kind, Predicate<Solvent> covered, String what) {
        Set<Solvent> held = draft.items(Kind.AGENT, Agent.class).values().stream()
                .map(a -> a.solvents().keySet()).flatMap(Collection::stream)
                .collect(Collectors.toCollection(TreeSet::new));
        return held.stream().filter(covered.negate()).map(solvent -> new Fault(kind.place, "",
                Texts.said("fault.uncovered", "kind", solvent.name().toLowerCase(java.util.Locale.ROOT), "covers", what),
                Texts.said("fault.uncovered.do"))).toList();
    }
}
