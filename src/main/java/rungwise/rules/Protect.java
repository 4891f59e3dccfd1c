package rungwise.rules;

import java.util.List;

/** What the person wears or arranges. Items are only ever added. */
public record Protect(String method, List<String> items, String figures) implements Conclusion {
    public Protect {
        items = List.copyOf(items);
    }

    @Override
    public String key() {
        return method + " " + items + " " + figures;
    }
}
