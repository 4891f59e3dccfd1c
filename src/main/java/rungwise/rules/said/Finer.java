package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** One method is the finer grade of the series that both belong to. */
public record Finer(String fine, String coarse, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(fine, coarse));
    }
}
