package rungwise.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungwise.knowledge.words.AskedFact;
import rungwise.names.PlainAges;
import rungwise.names.Vocabulary;
import rungwise.question.Ages;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads what somebody says: words that steer the talk, letters of a list, and what stands in place of a listed reply. */
final class Hearing {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Pattern FIGURE = Pattern.compile("(-?\\d{1,6}(?:\\.\\d{1,3})?)\\s*[^\\d\\s]{0,6}");
    private static final Pattern SPAN = Pattern.compile("(\\d{1,5})(?:\\s*(?:to|-|–|…)\\s*(\\d{1,5}))?\\s*[^\\d\\s]{0,3}");
    /** A slip of the letter of a list names nothing that was put on. */
    private static final int SHORTEST = 3;
    /** Words of a sentence that are listened to, and of a name that is looked for in it. */
    private static final int MOST_WORDS = 40;
    private static final int LONGEST_RUN = 6;
    private static final List<String> DENYING = words("ask.words.denying");
    private static final List<String> UNKNOWN = words("ask.words.unknown");
    private static final List<String> BACK = words("ask.words.back");
    private static final List<String> LEADING = words("ask.words.leading");
    private static final List<String> YES = words("ask.words.yes");
    private static final List<String> NO = words("ask.words.no");
    private static final List<String> UNTIL = words("ask.words.until");
    private static final List<String> WHERE = words("ask.words.where");

    private Hearing() {
    }

    private static List<String> words(String id) {
        return List.of(Texts.said(id).split(", "));
    }

    static boolean isUnknown(String said) {
        return said.isEmpty() || said.equals("?") || UNKNOWN.contains(plain(said));
    }

    static boolean isYes(String said) {
        return YES.contains(plain(said));
    }

    static boolean isNo(String said) {
        return NO.contains(plain(said));
    }

    private static String plain(String said) {
        return said.toLowerCase(Locale.ROOT).replaceAll("[.,;!]+$", "");
    }

    /** Whether what comes next is where something is. */
    static boolean isWhere(String word) {
        return WHERE.contains(word.toLowerCase(Locale.ROOT));
    }

    /** Whether what comes next is a time to come, until which the vehicle stays. */
    static boolean isUntil(String word) {
        return UNTIL.contains(word.toLowerCase(Locale.ROOT));
    }

    static boolean isBack(String said) {
        return BACK.contains(said.toLowerCase(Locale.ROOT));
    }

    /** What was said, and the same without small words before it: "on the bonnet" and "bonnet". */
    static List<String> ways(String said) {
        List<String> ways = new ArrayList<>(List.of(said));
        String rest = said;
        for (Optional<String> cut = cut(rest); cut.isPresent(); cut = cut(rest)) {
            rest = cut.get();
            ways.add(rest);
        }
        return ways;
    }

    /** Whether something is said not to be there. */
    static boolean isDenied(String said) {
        return Stream.of(said.toLowerCase(Locale.ROOT).split("[^\\p{L}']+")).anyMatch(DENYING::contains);
    }

    /** Whether the words of denying are among these, so that what is denied is not taken for what is there. */
    static boolean isTaken(String run, String said) {
        return !isDenied(said) || isDenied(run);
    }

    /** Every run of words, the longest first. */
    static List<String> runs(String said) {
        List<String> words = Stream.of(said.strip().split("[\\s,;:!?]+")).filter(w -> !w.isEmpty()).limit(MOST_WORDS).toList();
        List<String> runs = new ArrayList<>();
        for (int many = Math.min(words.size(), LONGEST_RUN); many > 0; many--) {
            for (int from = 0; from + many <= words.size(); from++) {
                runs.add(String.join(" ", words.subList(from, from + many)));
            }
        }
        return runs;
    }

    /** Every run of two words or more within what was said: danger is heard wherever it stands in a sentence. */
    static List<String> within(String said) {
        List<String> words = Stream.of(said.strip().split("[\\s,.;:!?]+")).limit(MOST_WORDS).toList();
        List<String> runs = new ArrayList<>();
        for (int from = 0; from < words.size(); from++) {
            for (int to = Math.min(words.size(), from + LONGEST_RUN); to - from >= 2; to--) {
                runs.add(String.join(" ", words.subList(from, to)));
            }
        }
        return runs;
    }

    private static Optional<String> cut(String said) {
        return LEADING.stream().filter(l -> said.length() > l.length() + 1 && said.regionMatches(true, 0, l + " ", 0, l.length() + 1))
                .map(l -> said.substring(l.length() + 1).strip()).findFirst();
    }

    /** Which of so many a letter means. */
    static Optional<Integer> letter(String said, int many) {
        String one = said.endsWith(")") || said.endsWith(".") ? said.substring(0, said.length() - 1) : said;
        int place = one.length() == 1 ? Character.toLowerCase(one.charAt(0)) - 'a' : -1;
        return place >= 0 && place < many ? Optional.of(place) : Optional.empty();
    }

    static String letter(int place) {
        return String.valueOf((char) ('a' + place));
    }

    /** What is said in place of a reply, as it stands in the question; empty where it cannot be read so. */
    static Optional<JsonNode> freely(AskedFact.Takes takes, String said, Vocabulary vocabulary) {
        PlainAges ages = vocabulary.ages();
        Optional<JsonNode> value = switch (takes.as()) {
            case DAYS -> ages.iso(said).map(iso -> NODES.numberNode(Math.floor(Ages.hours(iso) / 24)));
            case MINUTES -> ages.iso(said).map(iso -> NODES.numberNode(Math.floor(Ages.hours(iso) * 60)));
            case NUMBER -> Optional.of(FIGURE.matcher(said)).filter(Matcher::matches).map(m -> NODES.numberNode(Double.parseDouble(m.group(1))));
            case SPAN -> Optional.of(SPAN.matcher(said)).filter(Matcher::matches).map(Hearing::span);
            case WORD -> Optional.of(NODES.stringNode(said));
            case TRY -> said.length() < SHORTEST ? Optional.empty() : Optional.of(Told.tries(new TriesTold(vocabulary).asked(said)));
        };
        return value.map(v -> at(takes.field(), v));
    }

    private static JsonNode span(Matcher m) {
        return NODES.objectNode().put("min", Integer.parseInt(m.group(1))).put("max", Integer.parseInt(m.group(2) == null ? m.group(1) : m.group(2)));
    }

    /** A value in the field that a pointer names. */
    private static JsonNode at(String pointer, JsonNode value) {
        List<String> steps = Stream.of(pointer.substring(1).split("/")).toList();
        JsonNode inner = value;
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (steps.get(i).equals("0")) {
                ArrayNode array = NODES.arrayNode();
                inner = array.add(inner);
            } else {
                ObjectNode object = NODES.objectNode();
                inner = object.set(steps.get(i), inner);
            }
        }
        return inner;
    }
}
