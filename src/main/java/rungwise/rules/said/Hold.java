package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** Stop before any work: a hazard outranks the cleaning. */
public record Hold(String what, String doFirst, String until, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of();
    }
}
