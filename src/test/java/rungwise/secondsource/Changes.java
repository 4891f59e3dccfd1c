package rungwise.secondsource;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;

/** Every figure of the kinds that can hurt or decide, each changed towards what is less careful. */
final class Changes {
    private static final Map<String, String> CHANCES = Map.of("VL", "U", "L", "VU", "P", "VL", "U", "L", "VU", "L");

    private Changes() {
    }

    /** As many of each kind, drawn. */
    static Map<String, List<Changed>> drawn(Random random, int ofEach) {
        Map<String, List<Changed>> all = all();
        all.replaceAll((kind, changes) -> {
            List<Changed> mixed = new ArrayList<>(changes);
            Collections.shuffle(mixed, random);
            return List.copyOf(mixed.subList(0, Math.min(ofEach, mixed.size())));
        });
        return all;
    }

    static Map<String, List<Changed>> all() {
        Map<String, List<Changed>> all = new TreeMap<>();
        figures(all, "limits in air times nine", f -> f.equals("exposure.yaml"), "/limits/[0-9]+/value", v -> v * 9);
        figures(all, "minutes of gloves times twenty", f -> f.equals("gloves.yaml"), "/charts/[0-9]+/minutes", v -> v * 20);
        figures(all, "factors of masks times five", f -> f.equals("respirators.yaml"), "/factor", v -> v * 5);
        figures(all, "temperatures of surfaces plus 30", f -> f.startsWith("surfaces/"), "/maxC", v -> v + 30);
        figures(all, "pH that a surface bears plus 2", f -> f.startsWith("surfaces/"), "/acidity/to", v -> Math.min(14, v + 2));
        figures(all, "pH that a surface bears less 2", f -> f.startsWith("surfaces/"), "/acidity/from", v -> Math.max(0, v - 2));
        figures(all, "hours to a mark times ten", f -> f.startsWith("contaminants/"), "/marks/(hot|cool)", v -> v * 10);
        figures(all, "hours to hard times ten", f -> f.startsWith("contaminants/"), "/hardens/(hot|cool)", v -> v * 10);
        figures(all, "minutes of work times five", f -> f.startsWith("methods/"), "/minutes/(spot|squareMetre)", v -> v * 5);
        figures(all, "dwell times five", f -> f.startsWith("methods/"), "/dwell/to", v -> v * 5);
        figures(all, "temperatures of methods plus 30", f -> f.startsWith("methods/"), "/window/to", v -> v + 30);
        figures(all, "film by a tenth", f -> f.startsWith("methods/"), "/severity/filmMicrons", v -> v / 10);
        words(all);
        return all;
    }

    private static void figures(Map<String, List<Changed>> all, String kind, Predicate<String> file, String where, UnaryOperator<Double> change) {
        List<Changed> found = new ArrayList<>();
        Changed.files().keySet().stream().filter(file).forEach(name -> Changed.ids(Changed.files().get(name)).forEach(id -> each(
                Changed.entry(name, id), "", (at, node) -> {
                    if (node.isNumber() && at.matches(where) && node.asDouble() != 0) {
                        found.add(Changed.of(name, id, at, change));
                    }
                })));
        all.put(kind, found);
    }

    /** Chances are letters: what is likely becomes unlikely, and the other way round. */
    private static void words(Map<String, List<Changed>> all) {
        List<Changed> found = new ArrayList<>();
        Changed.files().keySet().stream().filter(f -> f.startsWith("methods/")).forEach(name -> Changed.ids(Changed.files().get(name))
                .forEach(id -> each(Changed.entry(name, id), "", (at, node) -> {
                    if (node.isString() && at.startsWith("/chances/") && CHANCES.containsKey(node.asString())) {
                        found.add(new Changed(name, id, JsonPointer.compile(at), Changed.word(CHANCES.get(node.asString()))));
                    }
                })));
        all.put("chances turned round", found);
    }

    private interface Seen {
        void at(String pointer, JsonNode node);
    }

    private static void each(JsonNode node, String at, Seen seen) {
        seen.at(at, node);
        node.forEachEntry((key, value) -> each(value, at + "/" + key, seen));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            each(node.get(i), at + "/" + i, seen);
        }
    }
}
