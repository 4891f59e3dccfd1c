package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/**
 * What one method cannot do, another like it can hardly do either; whether it does as much here is a matter of chances.
 *
 * @param like chemistry: both are of one family; mechanism: both take off by the same way of working
 */
public record Replaces(String one, String other, Like like, List<Figure> figures) implements Conclusion {
    public enum Like { CHEMISTRY, MECHANISM }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(one, other));
    }
}
