package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwise.text.Figure;

/**
 * A method is not used here.
 *
 * @param opensWith the step that would lift it (shade, cool, warm, buy, another_worker, gauge, ventilate, spent, next_visit, ask_product, dry_weather); empty = nothing does
 */
public record Bar(String method, List<Figure> figures, Kind kind, String opensWith) implements Conclusion {
    /** What keeps a method off. */
    public enum Kind {
        /** The surface, the deposit or the customer forbids it. */
        NEVER,
        /** The weather, the shelf, a worker, the gauge or the air stand in its way: a step lifts it. */
        NOT_NOW,
        /** Its tries, its contact or its film are spent, or what was used before it still lies there. */
        USED_UP,
        /** It does no harm here: it is merely made for another material. */
        MADE_FOR_OTHER
    }

    private static final Set<String> WEATHER = Set.of("shade", "cool", "warm", "dry_weather");
    /** All that may lift one. */
    public static final Set<String> LIFTED_BY = Set.of("shade", "cool", "warm", "buy", "another_worker", "gauge", "ventilate", "spent",
            "next_visit", "ask_product", "dry_weather");

    public Bar {
        if (opensWith.isEmpty() == (kind == Kind.NOT_NOW || kind == Kind.USED_UP)) {
            throw new IllegalArgumentException("a bar that is lifted names the step that does, and no other: " + method + " " + kind);
        }
    }

    public static Bar never(String method, List<Figure> figures) {
        return new Bar(method, figures, Kind.NEVER, "");
    }

    public static Bar notNow(String method, List<Figure> figures, String opensWith) {
        return new Bar(method, figures, Kind.NOT_NOW, opensWith);
    }

    public static Bar usedUp(String method, List<Figure> figures, String opensWith) {
        return new Bar(method, figures, Kind.USED_UP, opensWith);
    }

    public static Bar madeForOther(String method, List<Figure> figures) {
        return new Bar(method, figures, Kind.MADE_FOR_OTHER, "");
    }

    /** Whether it stands only because of what was tried before. */
    public boolean isSpent() {
        return kind == Kind.USED_UP;
    }

    /** Whether waiting, shading or warming would lift it. */
    public boolean isWeather() {
        return kind == Kind.NOT_NOW && WEATHER.contains(opensWith);
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(method));
    }

    @Override
    public String key() {
        return method + " " + figures + " " + opensWith;
    }
}
