package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/**
 * One method comes after another where both are candidates.
 *
 * @param needed the later one is of no use, or unsafe, without the earlier one
 */
public record After(String first, String then, boolean needed, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(first, then));
    }
}
