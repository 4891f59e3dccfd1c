package rungwise.knowledge.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.text.Texts;

/** An entry that nothing names: forgotten, or a typing error elsewhere. */
final class UnusedEntryCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        // rules name these too: without their ids nothing can be said of them
        Stream<Kind> kinds = Stream.concat(Stream.of(Kind.AGENT, Kind.TOOL, Kind.FAMILY, Kind.BOND_CLASS, Kind.COMPONENT,
                        Kind.COMPONENT_CLASS, Kind.REACH),
                draft.usedElsewhere().isEmpty() ? Stream.empty() : Stream.of(Kind.GATE, Kind.SOURCE, Kind.PPE,
                        Kind.WASTE, Kind.LEVEL));
        return kinds.flatMap(kind -> {
            Set<String> used = used(draft, kind);
            return draft.entries(kind).filter(e -> e.hasId() && !used.contains(e.id()))
                    .map(e -> e.fault("", wrong(kind), Texts.said("fault.unused.do")));
        }).toList();
    }

    private static String wrong(Kind kind) {
        return switch (kind) {
            case AGENT, TOOL -> Texts.said("fault.unused-by-methods");
            case FAMILY -> Texts.said("fault.empty-family");
            default -> Texts.said("fault.unused");
        };
    }

    private static Set<String> used(Draft draft, Kind kind) {
        Set<String> used = new HashSet<>(draft.usedElsewhere().orElse(Set.of()));
        Reference.ALL.stream().filter(r -> r.to() == kind)
                .forEach(r -> draft.entries(r.from()).flatMap(r::namedBy).forEach(used::add));
        return used;
    }
}
