package rungwise.rules.said;

import java.util.List;
import java.util.Map;
import rungwise.text.Figure;

/** A method may be used once a gate is open. */
public record Gated(String method, String gate, List<Figure> figures) implements Conclusion {
    @Override
    public String key() {
        return method + " " + gate + " " + figures;
    }

    @Override
    public Map<Entry, List<String>> named() {
        return Map.of(Entry.METHOD, List.of(method), Entry.GATE, List.of(gate));
    }
}
