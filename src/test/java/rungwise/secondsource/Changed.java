package rungwise.secondsource;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.load.KnowledgeLoader;
import rungwise.knowledge.load.Mappers;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A copy of the knowledge in which one figure of one entry is another.
 *
 * @param file  where the entry stands
 * @param entry its id
 * @param at    where the figure stands in the entry
 * @param to    what it becomes
 */
record Changed(String file, String entry, JsonPointer at, JsonNode to) {
    private static final Map<String, String> KNOWN = KnowledgeFiles.builtIn("knowledge");
    private static final Map<String, JsonNode> TREES = trees();

    private static Map<String, JsonNode> trees() {
        Map<String, JsonNode> trees = new TreeMap<>();
        KNOWN.forEach((name, text) -> {
            if (name.endsWith(".yaml")) {
                trees.put(name, Mappers.yaml().readTree(text));
            }
        });
        return trees;
    }

    /** The knowledge as it is, file by file. */
    static Map<String, JsonNode> files() {
        return TREES;
    }

    static Changed of(String file, String entry, String at, UnaryOperator<Double> change) {
        JsonPointer pointer = JsonPointer.compile(at);
        JsonNode was = in(TREES.get(file), entry).at(pointer);
        return new Changed(file, entry, pointer, Mappers.yaml().getNodeFactory().numberNode(change.apply(was.asDouble())));
    }

    /** The same of what stands in a list, found by what it says. */
    static Changed of(String file, String entry, String list, Predicate<JsonNode> which, String field, UnaryOperator<Double> change) {
        ArrayNode all = (ArrayNode) in(TREES.get(file), entry).path(list);
        for (int i = 0; i < all.size(); i++) {
            if (which.test(all.get(i))) {
                return of(file, entry, "/" + list + "/" + i + "/" + field, change);
            }
        }
        throw new IllegalArgumentException(entry + " has no such " + list);
    }

    private static ObjectNode in(JsonNode file, String id) {
        if (file.isObject()) {
            return file.asObject();
        }
        return file.valueStream().filter(e -> e.path("id").asString().equals(id)).findFirst().orElseThrow().asObject();
    }

    private Map<String, String> texts() {
        JsonNode tree = TREES.get(file).deepCopy();
        JsonNode parent = in(tree, entry).at(at.head());
        if (parent instanceof ArrayNode list) {
            list.set(at.last().getMatchingIndex(), to);
        } else {
            ((ObjectNode) parent).set(at.last().getMatchingProperty(), to);
        }
        Map<String, String> texts = new TreeMap<>(KNOWN);
        texts.put(file, Mappers.yaml().writeValueAsString(tree));
        return texts;
    }

    KnowledgeLoader.Loaded loaded() {
        return KnowledgeLoader.loadProven(texts(), "changed");
    }

    KnowledgeBase base() {
        KnowledgeLoader.Loaded loaded = loaded();
        return loaded.base().filter(b -> loaded.faults().isEmpty()).orElseThrow(() -> new IllegalStateException(
                this + ": " + loaded.faults().stream().map(Fault::toString).toList()));
    }

    JsonNode from() {
        return in(TREES.get(file), entry).at(at);
    }

    @Override
    public String toString() {
        return entry + at + " " + from() + " -> " + to;
    }

    static JsonNode word(String word) {
        return Mappers.yaml().getNodeFactory().stringNode(word);
    }

    static List<String> ids(JsonNode file) {
        return file.isObject() ? List.of(file.path("id").asString()) : file.valueStream().map(e -> e.path("id").asString()).toList();
    }

    static JsonNode entry(String file, String id) {
        return in(TREES.get(file), id);
    }
}
