package rungwise.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwise.knowledge.common.Figures;

/**
 * The sentences of one language, by id. A language is one file below {@code messages/}; a sentence names what is put into it
 * in braces, so that another language may put it in another place.
 */
public final class Texts {
    public static final Texts ENGLISH = read("en");
    private static final Pattern PLACE = Pattern.compile("\\{(\\w+)}");

    private final Map<String, String> byId;

    private Texts(Map<String, String> byId) {
        this.byId = byId;
    }

    private static Texts read(String language) {
        Properties all = new Properties();
        try (InputStream in = Texts.class.getResourceAsStream("/messages/" + language + ".properties")) {
            if (in == null) {
                throw new IllegalArgumentException("there is no message file for the language " + language);
            }
            all.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, String> byId = new TreeMap<>();
        all.stringPropertyNames().forEach(id -> byId.put(id, all.getProperty(id)));
        return new Texts(byId);
    }

    /** Every id of a sentence. */
    public Map<String, String> all() {
        return Map.copyOf(byId);
    }

    public boolean has(String id) {
        return byId.containsKey(id);
    }

    /**
     * A sentence, with what is put into it.
     *
     * @param named name and value by turns
     */
    public String say(String id, Object... named) {
        String sentence = byId.get(id);
        if (sentence == null) {
            throw new IllegalArgumentException("no message file has the sentence " + id);
        }
        Map<String, Object> values = new LinkedHashMap<>();
        for (int i = 0; i + 1 < named.length; i += 2) {
            values.put((String) named[i], named[i + 1]);
        }
        return fill(sentence, values);
    }

    /** A sentence of knowledge or of a rule, with the figures it names. */
    public String fill(String sentence, List<Figure> figures) {
        if (sentence.indexOf('{') < 0) {
            return sentence;
        }
        Map<String, Object> values = new LinkedHashMap<>();
        figures.forEach(f -> values.putIfAbsent(f.name(), value(f, f.value())));
        return fill(sentence, values);
    }

    private static String fill(String sentence, Map<String, Object> values) {
        Matcher place = PLACE.matcher(sentence);
        StringBuilder filled = new StringBuilder();
        while (place.find()) {
            Object value = values.get(place.group(1));
            if (value == null) {
                throw new IllegalArgumentException("nothing stands for {" + place.group(1) + "} in: " + sentence);
            }
            place.appendReplacement(filled, Matcher.quoteReplacement(value instanceof Number number
                    ? Figures.text(number.doubleValue()) : value.toString()));
        }
        return place.appendTail(filled).toString();
    }

    /** Figures as a person reads them, in their order. */
    public String of(List<Figure> figures) {
        return String.join("; ", figures.stream().map(this::of).toList());
    }

    /** One figure with its label, and what it was held against where the label does not say that itself. */
    public String of(Figure figure) {
        String value = value(figure, figure.value());
        Optional<String> limit = figure.limit().map(l -> value(figure, l));
        String label = byId.getOrDefault("figure." + figure.name(), figure.name() + " {value}");
        if (label.contains("{limit}")) {
            // a label that puts two things together says nothing of one alone
            return limit.map(l -> fill(label, Map.of("value", value, "limit", l))).orElse(value);
        }
        String said = fill(label, Map.of("value", value));
        return limit.map(l -> say("figures.against", "figure", said, "limit", l)).orElse(said);
    }

    /** A number or range with its unit; a word that has a sentence of its own by that. */
    private String value(Figure figure, Object value) {
        if (value instanceof String word) {
            return byId.getOrDefault("figure." + figure.name() + "." + word, word);
        }
        String text = value instanceof Number number ? Figures.text(number.doubleValue()) : value.toString();
        return figure.unit().map(u -> text + " " + unit(u, text.equals("1"))).orElse(text);
    }

    /** A unit that is a word stands in the message file, one of it apart; a sign stands for itself. */
    private String unit(String unit, boolean one) {
        String many = byId.getOrDefault("unit." + unit, unit);
        return one ? byId.getOrDefault("unit." + unit + ".one", many) : many;
    }
}
