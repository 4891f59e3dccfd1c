package rungwise.rules;

import java.util.List;
import java.util.Set;
import rungwise.text.Figure;

/**
 * A method is never used here.
 *
 * @param opensWith the step that would lift it today (shade, cool, warm, buy, another_worker, gauge, ventilate, spent, next_visit, ask_product); empty = nothing does
 */
public record Bar(String method, List<Figure> figures, String opensWith) implements Conclusion {
    private static final Set<String> WEATHER = Set.of("shade", "cool", "warm");
    private static final Set<String> SPENT = Set.of("next_visit", "spent", "ask_product");

    public Bar(String method, String figures) {
        this(method, figures, "");
    }

    public static Bar never(String method, List<Figure> figures) {
        return new Bar(method, figures, "");
    }

    /** Whether it stands only because of what was tried before. */
    public boolean isSpent() {
        return SPENT.contains(opensWith);
    }

    /** Whether waiting, shading or warming would lift it. */
    public boolean isWeather() {
        return WEATHER.contains(opensWith);
    }

    @Override
    public String key() {
        return method + " " + figures + " " + opensWith;
    }

    public Bar(String method, String figures, String opensWith) {
        this(method, Figure.said(figures), opensWith);
    }
}
