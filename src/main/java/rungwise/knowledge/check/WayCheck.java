package rungwise.knowledge.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.text.Texts;

/** A way that no method has, or that takes nothing, decides no chance. */
final class WayCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        if (!draft.isReadable(Kind.METHOD) || !draft.isReadable(Kind.COMPONENT)) {
            return List.of(); // what uses it may be what could not be read
        }
        Set<String> worked = namedBy(draft, Kind.METHOD);
        Set<String> taking = namedBy(draft, Kind.COMPONENT);
        return draft.entries(Kind.WAY).filter(e -> e.hasId()).flatMap(e -> Stream.concat(
                worked.contains(e.id()) ? Stream.empty() : Stream.of(e.fault("", Texts.said("fault.way-of-no-method"),
                        Texts.said("fault.way-of-no-method.do"))),
                taking.contains(e.id()) ? Stream.empty() : Stream.of(e.fault("", Texts.said("fault.way-takes-nothing"),
                        Texts.said("fault.way-takes-nothing.do"))))).toList();
    }

    /** As written, so that what is wrong elsewhere in an entry hides no name. */
    private static Set<String> namedBy(Draft draft, Kind kind) {
        return Reference.ALL.stream().filter(r -> r.from() == kind && r.to() == Kind.WAY)
                .flatMap(r -> draft.entries(kind).flatMap(r::namedBy)).collect(Collectors.toSet());
    }
}
