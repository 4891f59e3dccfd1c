package rungwise.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.ResourceBundle.Control;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rungwise.knowledge.common.Figures;

/**
 * The sentences of one language, by id. A language is one file below {@code messages/} on the class path, or any file that is
 * named; what it leaves out is said in English. A sentence names what is put into it in braces, so that another language may
 * put it in another place.
 */
public final class Texts {
    public static final Texts ENGLISH = new Texts(builtIn("en").orElseThrow());
    private static final String ENDING = ".properties";
    private static final Pattern PLACE = Pattern.compile("\\{(\\w+)}");
    /** What the program speaks; English until a start chooses otherwise, so that a build and a test need no setting. */
    private static volatile Texts chosen = ENGLISH;

    private final Map<String, String> byId;

    private Texts(Map<String, String> byId) {
        this.byId = byId;
    }

    /** In what the program speaks. */
    public static Texts chosen() {
        return chosen;
    }

    /** A sentence in what the program speaks; see {@link #say}. */
    public static String said(String id, Object... named) {
        return chosen.say(id, named);
    }

    /**
     * Speaks another language from now on: once, at the start.
     *
     * @param setting a language as {@code de} or {@code de_AT}, or a message file; where nothing is set the language of the
     *                machine counts, if it has a file
     * @throws IllegalArgumentException where nothing is there for what was set
     */
    public static void choose(Optional<String> setting, Locale machine) {
        chosen = setting.filter(s -> !s.isBlank()).map(Texts::set).orElseGet(() -> of(machine));
    }

    private static Texts set(String setting) {
        if (setting.endsWith(ENDING)) {
            return ENGLISH.with(file(Path.of(setting)));
        }
        Locale language = Locale.forLanguageTag(setting.replaceFirst("[.@].*", "").replace('_', '-'));
        if (!language.getLanguage().equals(Locale.ENGLISH.getLanguage()) && files(language).isEmpty()) {
            throw new IllegalArgumentException(ENGLISH.say("language.none", "setting", setting));
        }
        return of(language);
    }

    /** English beneath, the language upon it, and on top what its country says otherwise. */
    static Texts of(Locale language) {
        Texts all = ENGLISH;
        for (Map<String, String> file : files(language)) {
            all = all.with(file);
        }
        return all;
    }

    private static List<Map<String, String>> files(Locale language) {
        List<Map<String, String>> files = new ArrayList<>();
        for (Locale one : Control.getControl(Control.FORMAT_PROPERTIES).getCandidateLocales("messages", language)) {
            Optional.of(one.toString()).filter(name -> !name.isEmpty() && !name.equals("en")).flatMap(Texts::builtIn)
                    .ifPresent(file -> files.add(0, file));
        }
        return files;
    }

    /** The same, with what another file says otherwise; it may put in what the English sentence names, all of it and nothing else. */
    private Texts with(Map<String, String> more) {
        more.forEach((id, sentence) -> {
            String english = ENGLISH.byId.get(id);
            if (english == null) {
                throw new IllegalArgumentException(ENGLISH.say("language.no-sentence", "id", id));
            }
            if (sentence.isBlank() && !english.isBlank() || sentence.chars().anyMatch(c -> Character.isISOControl(c) && c != '\n')) {
                throw new IllegalArgumentException(ENGLISH.say("language.empty", "id", id));
            }
            Set<String> known = places(english);
            Set<String> here = places(sentence);
            if (!known.containsAll(here)) {
                throw new IllegalArgumentException(ENGLISH.say("language.other-place", "id", id, "places", here, "known", known));
            }
            if (!here.containsAll(known)) {
                known.removeAll(here);
                throw new IllegalArgumentException(ENGLISH.say("language.missing-place", "id", id, "places", known));
            }
        });
        Map<String, String> all = new TreeMap<>(byId);
        all.putAll(more);
        return new Texts(all);
    }

    private static Optional<Map<String, String>> builtIn(String language) {
        try (InputStream in = Texts.class.getResourceAsStream("/messages/" + language + ".properties")) {
            return in == null ? Optional.empty() : Optional.of(read(new InputStreamReader(in, StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> file(Path file) {
        try (Reader in = Files.newBufferedReader(file)) {
            return read(in);
        } catch (IOException e) {
            throw new IllegalArgumentException(ENGLISH.say("language.no-file", "file", file), e);
        }
    }

    private static Map<String, String> read(Reader in) throws IOException {
        Properties all = new Properties();
        all.load(in);
        Map<String, String> byId = new TreeMap<>();
        all.stringPropertyNames().forEach(id -> byId.put(id, all.getProperty(id)));
        return byId;
    }

    private static Set<String> places(String sentence) {
        return PLACE.matcher(sentence).results().map(r -> r.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    public boolean isEnglish() {
        return byId.equals(ENGLISH.byId);
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
