package rungwise.knowledge;

import java.util.List;
import java.util.stream.Stream;

/** A statement called published that names nothing published. */
final class MissingSourceCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.entries().stream().flatMap(entry -> Stream.of("", "overrides", "spheres").flatMap(part ->
                (part.isEmpty() ? Stream.of(entry.node()) : entry.node().path(part).values().stream())
                        .filter(n -> n.path("basis").asString("").equals("published") && n.path("sources").isEmpty())
                        .map(n -> entry.fault((part + "/basis").replaceFirst("^/", ""),
                                "it is called published but names no source",
                                "name the source, or say memory or common_practice")))).toList();
    }
}
