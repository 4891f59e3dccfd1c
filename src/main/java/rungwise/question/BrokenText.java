package rungwise.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.databind.ObjectMapper;

/**
 * Why a text is neither JSON nor YAML, and where. The parsers' own words name their classes and settings, and now and then
 * what they were given; here they only tell one case from another.
 *
 * @param at     line and column, counted from one
 * @param why    what is wrong there
 * @param remedy what to do
 */
public record BrokenText(Optional<Spot> at, String why, String remedy) {
    private static final int SHOWN = 60;
    private static final List<Case> CASES = List.of(of("too-deep", "nesting depth"), of("long-text", "String value length"),
            of("long-number", "Number value length"), of("long-name", "Name length"), of("long-document", "Document length"),
            of("twice", "Duplicate (?:Object property|key) \"(.*)\""), of("after-end", "Trailing token|expected '<document start>', but found '(?!<stream end>)"),
            of("no-number", "Non-standard token '(.*?)'"), of("cut-short", "end-of-input|<stream end>|end of stream|closing quote"),
            of("not-utf-8", "UTF-(?:8|16|32)"), of("control-character", "CTRL-CHAR|special characters are not allowed"),
            of("escape", "escape"), of("bare-word", "Unrecognized token '(.*?)'"), of("number-form", "numeric value|plus signs"),
            of("tab", "\\\\t\\(TAB\\)"), of("colon", "mapping values are not allowed"),
            of("indentation", "block (?:collection|mapping|sequence)|block end"), of("cells", "Too many entries"),
            of("mark", "close marker|expected ',' or|was expecting|expected the node content|cannot start any token"));
    /** A parser of YAML says its last place in its words, and the place where it began beside them. */
    private static final Pattern IN_WORDS = Pattern.compile("line (\\d+), column (\\d+)");

    /** A line and a column. */
    public record Spot(int line, int column) {
    }

    private record Case(String id, Pattern said) {
    }

    private static Case of(String id, String said) {
        return new Case(id, Pattern.compile(said));
    }

    /** What is wrong with it, by what the parser said. */
    public static BrokenText of(JacksonException e) {
        String said = String.valueOf(e.getOriginalMessage());
        Optional<Spot> at = place(e, said);
        if (said.equals(Texts.said("fault.anchor"))) {
            return broken(at, "anchor");
        }
        if (e instanceof UnexpectedEndOfInputException) {
            return broken(at, "cut-short");
        }
        for (Case one : CASES) {
            Matcher found = one.said().matcher(said);
            if (found.find()) {
                return broken(at, one.id(), "word", found.groupCount() == 0 ? "" : shortened(found.group(1)));
            }
        }
        return broken(at, "other");
    }

    /** The same, with the place looked for again where the parser kept it to itself. */
    public static BrokenText of(JacksonException e, ObjectMapper mapper, byte[] text) {
        BrokenText broken = of(e);
        return broken.at().isPresent() ? broken : new BrokenText(where(mapper, text), broken.why(), broken.remedy());
    }

    /** A sentence without its end, with the place where it is known. */
    public String said() {
        return at.map(spot -> Texts.said("broken.at", "line", spot.line(), "column", spot.column(), "why", why)).orElse(why);
    }

    private static BrokenText broken(Optional<Spot> at, String id, Object... named) {
        return new BrokenText(at, Texts.said("broken." + id, named), Texts.said("broken." + id + ".do", named));
    }

    private static String shortened(String word) {
        String shown = PlainText.shown(word);
        return shown.length() > SHOWN ? shown.substring(0, SHOWN) + "…" : shown;
    }

    private static Optional<Spot> place(JacksonException e, String said) {
        List<Spot> inWords = new ArrayList<>();
        IN_WORDS.matcher(said).results().forEach(r -> inWords.add(new Spot(Integer.parseInt(r.group(1)), Integer.parseInt(r.group(2)))));
        return inWords.isEmpty() ? spot(e.getLocation()) : Optional.of(inWords.get(inWords.size() - 1));
    }

    private static Optional<Spot> spot(TokenStreamLocation at) {
        return at == null || at.getLineNr() < 1 ? Optional.empty() : Optional.of(new Spot(at.getLineNr(), at.getColumnNr()));
    }

    private static Optional<Spot> where(ObjectMapper mapper, byte[] text) {
        try (JsonParser parser = mapper.createParser(text)) {
            try {
                for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                    parser.getString();
                }
                return Optional.empty();
            } catch (JacksonException e) {
                return spot(parser.currentLocation());
            }
        }
    }
}
