package rungwise.knowledge.check;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Fault;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** A statement called published that names nothing published. */
final class MissingSourceCheck implements Check {
    /** Fields whose parts carry a basis of their own. */
    private static final List<String> NESTED = List.of("remarks", "solvents", "limits", "vapour", "dissociation", "henry", "charts",
            "spheres");

    @Override
    public List<Fault> faults(Draft draft) {
        return draft.entries().stream().flatMap(entry -> Stream.concat(
                unsourced(entry, "", Stream.of(entry.node())),
                NESTED.stream().flatMap(field -> unsourced(entry, field + "/", values(entry.node().path(field)))))).toList();
    }

    private static Stream<JsonNode> values(JsonNode field) {
        boolean inside = field.isArray() || field.isObject() && !field.has("basis");
        return inside ? field.values().stream() : Stream.of(field);
    }

    private static Stream<Fault> unsourced(Entry entry, String at, Stream<JsonNode> nodes) {
        return nodes.filter(n -> n.path("basis").asString("").equals("published") && n.path("sources").isEmpty())
                .map(n -> entry.fault(at + "basis", Texts.said("fault.no-source"),
                        Texts.said("fault.no-source.do")));
    }
}
