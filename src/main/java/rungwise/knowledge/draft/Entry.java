package rungwise.knowledge.draft;

import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * One entry as it stands in its file.
 *
 * @param id   as written, or its place in the file where it has none
 * @param item the record, where the entry fits its schema
 */
public record Entry(Kind kind, String id, String file, JsonNode node, Optional<Object> item) {
    public boolean hasId() {
        return node.path("id").isString();
    }

    public Fault fault(String field, String wrong, String remedy) {
        return new Fault(file, (id + " " + field).strip(), wrong, remedy);
    }
}
