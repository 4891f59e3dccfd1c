package rungwise.lint;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.load.Mappers;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A sample of a page: an entry with those fields that matter, a whole file, or a rule. */
record Sample(String file, String text) {
    static Sample of(String sample) {
        String first = sample.lines().findFirst().orElseThrow();
        return new Sample(first.substring(2), sample.substring(first.length() + 1));
    }

    boolean isRule() {
        return file.endsWith(".drl");
    }

    /** Rules are named x1 and x2; an entry by its id. */
    boolean isAbout(Fault fault) {
        return isRule() ? fault.place().startsWith("x") : file.equals("waivers.yaml") || fault.place().startsWith(id());
    }

    private String id() {
        return Mappers.yaml().readTree(text).path("id").asString("");
    }

    /** Files with the sample in them: the fields of an entry that is there are replaced, a new one is added. */
    Map<String, String> in(Map<String, String> files) {
        Map<String, String> all = new TreeMap<>(files);
        all.put(file, merged(all.getOrDefault(file, "")));
        return all;
    }

    private String merged(String before) {
        JsonNode sample;
        try {
            sample = Mappers.yaml().readTree(text);
        } catch (JacksonException notYaml) {
            return text;
        }
        if (!(sample instanceof ObjectNode entry) || before.isEmpty()) {
            return text;
        }
        JsonNode there = Mappers.yaml().readTree(before);
        List<JsonNode> entries = there.isArray() ? List.copyOf(there.values()) : List.of(there);
        for (JsonNode one : entries) {
            if (one.path("id").equals(entry.path("id"))) {
                ((ObjectNode) one).setAll(entry);
                return Mappers.yaml().writeValueAsString(there);
            }
        }
        ((ArrayNode) there).add(entry);
        return Mappers.yaml().writeValueAsString(there);
    }
}
