package rungwise.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Fields of a tree, named by a pointer in which {@code *} stands for each place of a list. */
final class Fields {
    static final String EACH = "*";

    private Fields() {
    }

    /** Puts another text wherever the reader gives one for the pointer and text of a field; where it gives none, all stays. */
    static void reword(JsonNode tree, String pointer, BiFunction<String, String, Optional<String>> reader) {
        at(tree, List.of(pointer.substring(1).split("/")), "", reader);
    }

    private static void at(JsonNode node, List<String> path, String at, BiFunction<String, String, Optional<String>> reader) {
        List<String> rest = path.subList(1, path.size());
        for (String name : names(node, path.get(0))) {
            JsonNode child = node.isArray() ? node.get(Integer.parseInt(name)) : node.get(name);
            String here = at + "/" + name;
            if (!rest.isEmpty()) {
                at(child, rest, here, reader);
            } else if (child.isString()) {
                reader.apply(here, child.stringValue()).ifPresent(text -> put(node, name, text));
            }
        }
    }

    private static List<String> names(JsonNode node, String step) {
        if (step.equals(EACH)) {
            List<String> all = new ArrayList<>();
            for (int i = 0; node.isArray() && i < node.size(); i++) {
                all.add("" + i);
            }
            return all;
        }
        return node.isObject() && node.has(step) ? List.of(step) : List.of();
    }

    private static void put(JsonNode node, String name, String text) {
        if (node instanceof ArrayNode array) {
            array.set(Integer.parseInt(name), array.stringNode(text));
        } else {
            ((ObjectNode) node).put(name, text);
        }
    }
}
