package rungwise.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** Which fields of two questions differ, field by field. */
public final class Differences {
    private Differences() {
    }

    public static List<Comparison.Asked> between(JsonNode one, JsonNode other) {
        Map<String, String> first = new TreeMap<>();
        Map<String, String> second = new TreeMap<>();
        flatten("", one, first);
        flatten("", other, second);
        TreeSet<String> fields = new TreeSet<>(first.keySet());
        fields.addAll(second.keySet());
        String notSaid = Texts.said("compare.not-said");
        List<Comparison.Asked> asked = new ArrayList<>();
        for (String field : fields) {
            String a = first.getOrDefault(field, notSaid);
            String b = second.getOrDefault(field, notSaid);
            if (!a.equals(b)) {
                asked.add(new Comparison.Asked(field, a, b));
            }
        }
        return asked;
    }

    private static void flatten(String at, JsonNode node, Map<String, String> fields) {
        if (node.isObject() && !node.isEmpty()) {
            node.properties().forEach(e -> flatten(at + "/" + e.getKey(), e.getValue(), fields));
        } else {
            fields.put(at, node.isString() ? node.asString() : node.toString());
        }
    }
}
