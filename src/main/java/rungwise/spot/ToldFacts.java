package rungwise.spot;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Fields of a question that are told one after another. All trees are in ids. */
public final class ToldFacts {
    /** Lists that only grow: what was done, seen, passed or lies near stays so when more is told. */
    private static final Set<String> ADDED = Set.of("/observations", "/notSeen", "/circumstances", "/neighbours", "/done", "/passedTests",
            "/facts/priorDamage", "/consent/granted", "/consent/refused");
    /** The last word on an agreement counts. */
    private static final Map<String, String> OTHER = Map.of("/consent/granted", "refused", "/consent/refused", "granted");
    private static final String SURFACE = "surface";
    private static final String PASSED = "passedTests";
    private static final String DONE = "done";
    private static final String SETTING = "setting";
    /** Of the setting, what is the same tomorrow: the tap. */
    private static final Set<String> LASTING = Set.of("water");

    private ToldFacts() {
    }

    /** Whether several things may be told of a field one after another. */
    public static boolean isAdded(String pointer) {
        return ADDED.contains(pointer);
    }

    /** Lays what was told later over what was told before; null takes a fact out. A test that was passed counts on its surface only. */
    static void merge(ObjectNode into, ObjectNode later) {
        if (later.has(SURFACE) && into.has(SURFACE) && !later.get(SURFACE).equals(into.get(SURFACE))) {
            into.remove(PASSED);
        }
        merge(into, later, "", false);
    }

    /** Puts together what is told at once; null is told with it. */
    public static void gather(ObjectNode into, ObjectNode more) {
        merge(into, more, "", true);
    }

    private static void merge(ObjectNode into, ObjectNode later, String at, boolean keepNull) {
        later.properties().forEach(field -> {
            String name = field.getKey();
            String pointer = at + "/" + name;
            JsonNode told = field.getValue();
            if (told.isNull() && !keepNull) {
                into.remove(name);
            } else if (told instanceof ObjectNode more) {
                merge(into.get(name) instanceof ObjectNode before ? before : into.putObject(name), more, pointer, keepNull);
            } else if (told.isArray() && ADDED.contains(pointer)) {
                if (!told.isEmpty()) {
                    add(into.get(name) instanceof ArrayNode before ? before : into.putArray(name), told);
                }
                if (OTHER.containsKey(pointer) && into.get(OTHER.get(pointer)) instanceof ArrayNode other) {
                    other.removeIf(one -> contains(told, one));
                }
            } else {
                into.set(name, told.deepCopy());
            }
        });
    }

    private static void add(ArrayNode list, JsonNode more) {
        more.forEach(one -> {
            if (!contains(list, one)) {
                list.add(one);
            }
        });
    }

    private static boolean contains(JsonNode list, JsonNode one) {
        return StreamSupport.stream(list.spliterator(), false).anyMatch(one::equals);
    }

    /**
     * Takes out what held for the visit in which it was told: the steps done, the weather and where the vehicle stood.
     *
     * @return pointers to what was taken out, a word of a list behind the list
     */
    static Set<String> letGo(ObjectNode told) {
        Set<String> gone = new TreeSet<>();
        if (told.get(DONE) instanceof ArrayNode) {
            told.remove(DONE).forEach(word -> gone.add("/" + DONE + "/" + word.asString()));
        }
        if (told.get(SETTING) instanceof ObjectNode setting) {
            List.copyOf(setting.propertyNames()).stream().filter(name -> !LASTING.contains(name)).forEach(name -> {
                if (!setting.remove(name).isNull()) {
                    gone.add("/" + SETTING + "/" + name);
                }
            });
        }
        return gone;
    }

    /** Whether what was let go has been told again. */
    static boolean isThere(ObjectNode told, String pointer) {
        String word = "/" + DONE + "/";
        return pointer.startsWith(word) ? contains(told.path(DONE), told.stringNode(pointer.substring(word.length())))
                : !told.at(pointer).isMissingNode();
    }
}
