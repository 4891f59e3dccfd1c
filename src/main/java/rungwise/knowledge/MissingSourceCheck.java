package rungwise.knowledge;

import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** A statement called published that names nothing published. */
final class MissingSourceCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.entries().stream().flatMap(entry -> Stream.of(Stream.of(entry.node()),
                        entry.node().path("overrides").values().stream(),
                        entry.node().path("solvents").values().stream()).flatMap(s -> s)
                .filter(n -> n.path("basis").asString("").equals("published") && n.path("sources").isEmpty())
                .map(n -> entry.fault(field(entry, n),
                        "it is called published but names no source",
                        "name the source, or say memory or common_practice"))).toList();
    }

    private static String field(Entry entry, JsonNode node) {
        if (node == entry.node()) {
            return "basis";
        }
        return entry.node().path("overrides").values().stream().anyMatch(o -> o == node) ? "overrides/basis"
                : "solvents/basis";
    }
}
