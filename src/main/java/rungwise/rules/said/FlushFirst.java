package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.text.Figure;

/**
 * Minutes count: this comes before everything, whatever the temperature and the ranking.
 *
 * @param act what to do, where the spot is
 * @param aid all that is known of it
 */
public record FlushFirst(String method, String act, Contaminant.Emergency aid, List<Figure> figures) implements Conclusion {
    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(method));
    }
}
