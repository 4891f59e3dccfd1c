package rungwise.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeMap;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;

/** Draws questions from the whole knowledge: each field may be there or not. */
final class Questions {
    private static final KnowledgeBase BASE = Base.advisor().knowledge();
    private static final List<String> AGES = List.of("PT2H", "PT12H", "P1D", "P3D", "P12D", "P30D", "P200D", "unknown");

    private final Random random;

    Questions(long seed) {
        this.random = new Random(seed);
    }

    /** Fields by name, each as YAML; fields can be taken out or changed before {@link #text}. */
    TreeMap<String, String> draw() {
        TreeMap<String, String> q = new TreeMap<>();
        q.put("contaminant", one(BASE.contaminants().values().stream().filter(c -> c.holds().isEmpty()
                && c.emergency().isEmpty()).map(c -> c.id()).toList()));
        q.put("surface", one(List.copyOf(BASE.surfaces().keySet())));
        q.put("age", one(AGES));
        q.put("setting", "{panelC: " + (random.nextInt(4) == 0 ? random.nextInt(70) - 5 : 12 + random.nextInt(13))
                + ", sun: " + (random.nextInt(8) == 0 ? "direct" : "shade") + "}");
        maybe(q, "done", "[washed, dried]");
        maybe(q, "canWaitMinutes", "" + random.nextInt(120));
        maybe(q, "shelf", some(List.copyOf(BASE.methods().keySet()), 25));
        maybe(q, "neighbours", some(List.copyOf(BASE.surfaces().keySet()), 2));
        if (random.nextInt(3) == 0) {
            q.put("consent", "{granted: " + some(List.copyOf(BASE.gates().keySet()), 6) + ", refused: "
                    + some(List.copyOf(BASE.gates().keySet()), 2) + "}");
        }
        q.put("wanted", some(List.copyOf(BASE.methods().keySet()), 3));
        return q;
    }

    /** Facts of the panel by name. */
    TreeMap<String, String> facts() {
        TreeMap<String, String> f = new TreeMap<>();
        int low = 60 + random.nextInt(100);
        maybe(f, "totalFilmMicrons", "{min: " + low + ", max: " + (low + random.nextInt(30)) + "}");
        maybe(f, "clearMicrons", "" + (15 + random.nextInt(60)));
        maybe(f, "paintAgeDays", "" + random.nextInt(200));
        maybe(f, "refinished", "" + random.nextBoolean());
        maybe(f, "vehicleYear", "" + (1960 + random.nextInt(66)));
        maybe(f, "colour", one(List.of("dark", "medium", "light")));
        return f;
    }

    static String text(TreeMap<String, String> fields) {
        List<String> all = new ArrayList<>();
        fields.forEach((name, value) -> all.add(name + ": " + value));
        return "{" + String.join(", ", all) + "}";
    }

    static String text(TreeMap<String, String> fields, TreeMap<String, String> facts) {
        TreeMap<String, String> whole = new TreeMap<>(fields);
        whole.put("facts", text(facts));
        return text(whole);
    }

    Random random() {
        return random;
    }

    private void maybe(TreeMap<String, String> fields, String name, String value) {
        if (random.nextInt(2) == 0) {
            fields.put(name, value);
        }
    }

    private String one(List<String> of) {
        return of.get(random.nextInt(of.size()));
    }

    private String some(List<String> of, int most) {
        List<String> some = new ArrayList<>();
        for (int i = 1 + random.nextInt(most); i > 0; i--) {
            some.add(one(of));
        }
        return "[" + String.join(", ", some.stream().distinct().toList()).toLowerCase(Locale.ROOT)
                .replace("l1", "L1") + "]";
    }
}
