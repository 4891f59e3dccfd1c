package rungwise.knowledge.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.matter.Component;
import rungwise.knowledge.matter.Way;
import rungwise.knowledge.method.Method;

/** A way that no method has, or that takes nothing, decides no chance. */
final class WayCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        if (!draft.isWhole(Kind.METHOD) || !draft.isWhole(Kind.COMPONENT)) {
            return List.of(); // what uses it may be what could not be read
        }
        Set<String> worked = new HashSet<>();
        draft.items(Kind.METHOD, Method.class).values().forEach(m -> {
            worked.addAll(m.works());
            worked.addAll(m.worksLess());
        });
        Set<String> taking = new HashSet<>();
        draft.items(Kind.COMPONENT, Component.class).values().forEach(c -> c.takes().ways().forEach(taking::add));
        return draft.each(Kind.WAY, Way.class, (entry, way) -> Stream.concat(
                worked.contains(way.id()) ? Stream.empty() : Stream.of(entry.fault("", "no method works in this way",
                        "name it in a method, or leave it out")),
                taking.contains(way.id()) ? Stream.empty() : Stream.of(entry.fault("", "it takes no component",
                        "name it in a component, or leave it out"))));
    }
}
