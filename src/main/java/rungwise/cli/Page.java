package rungwise.cli;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Lines of a label and what it says, wrapped to a width, the label standing beside the first of them.
 *
 * @param width of the page in columns
 * @param plain whether only ASCII may be printed
 */
record Page(int width, boolean plain, List<String> lines) {
    private static final int LABEL = 9;
    /** Narrower than this, a label stands above what it says. */
    private static final int NARROW = 48;
    private static final Map<String, String> IN_ASCII = Map.ofEntries(Map.entry("µ", "u"), Map.entry("°", ""),
            Map.entry("²", "2"), Map.entry("³", "3"), Map.entry("–", "-"), Map.entry("—", "-"), Map.entry("×", "x"), Map.entry("…", "..."),
            Map.entry("·", "-"), Map.entry("→", "->"), Map.entry("≥", ">="), Map.entry("≤", "<="), Map.entry("’", "'"));

    Page(int width, boolean plain) {
        this(width, plain, new ArrayList<>());
    }

    /** A label with what it says; nothing where it says nothing. */
    void add(String label, String text) {
        if (text.isBlank()) {
            return;
        }
        int indent = width < NARROW ? 2 : LABEL;
        List<String> wrapped = wrapped(ascii(text), width - indent);
        boolean above = width < NARROW && !label.isEmpty();
        if (above) {
            lines.add(ascii(label));
        }
        for (int i = 0; i < wrapped.size(); i++) {
            String head = i == 0 && !above ? ascii(label) : "";
            lines.add(head + " ".repeat(Math.max(0, indent - head.length())) + wrapped.get(i));
        }
    }

    /** What each of these says, one beneath the other, the label beside the first. */
    void add(String label, List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            add(i == 0 ? label : "", texts.get(i));
        }
    }

    /** A text from the left edge on, its further lines so far from it. */
    void add(String text, int hanging) {
        List<String> wrapped = wrapped(ascii(text), width - hanging);
        for (int i = 0; i < wrapped.size(); i++) {
            lines.add((i == 0 ? "" : " ".repeat(hanging)) + wrapped.get(i));
        }
    }

    private static List<String> wrapped(String text, int width) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String rest = word;
            if (line.length() > 0 && line.length() + 1 + rest.length() > width) {
                out.add(line.toString());
                line.setLength(0);
            }
            while (rest.length() > width) {
                out.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line.append(line.length() > 0 ? " " : "").append(rest);
        }
        out.add(line.toString());
        return out;
    }

    private String ascii(String text) {
        if (!plain) {
            return text;
        }
        String out = text;
        for (Map.Entry<String, String> one : IN_ASCII.entrySet()) {
            out = out.replace(one.getKey(), one.getValue());
        }
        return Normalizer.normalize(out, Normalizer.Form.NFD).replaceAll("[^\\x20-\\x7e]", "");
    }
}
