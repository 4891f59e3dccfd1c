package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rungwise.knowledge.KnowledgeBase;
import rungwise.question.BadQuestion;
import rungwise.question.Problem;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.text.Near;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads a spot from a parsed tree and checks it against what is known. */
public final class SpotReader {
    private static final String CHECK_FOR = "checkFor";
    private static final String NAME = "name";
    private static final List<String> AIMS = List.of("minutes", NAME);
    private static final List<String> OWN = List.of("place", "surroundings", CHECK_FOR);

    private final KnowledgeBase base;
    private final List<Problem> problems = new ArrayList<>();

    private SpotReader(KnowledgeBase base) {
        this.base = base;
    }

    /**
     * The spot.
     *
     * @throws BadQuestion where a field is unknown, of the wrong kind, out of range, or names what is not known
     */
    public static Spot read(JsonNode tree, KnowledgeBase base) {
        return new SpotReader(base).spot(tree);
    }

    private Spot spot(JsonNode tree) {
        Optional<Question> question = question(tree);
        List<String> surroundings = words(tree, "surroundings", Spot.NEAR, known(Spot.NEAR));
        Optional<String> place = Optional.empty();
        if (tree.has("place")) {
            String word = tree.path("place").asString("");
            if (!known(Spot.PLACE).contains(word)) {
                problems.add(unknown("/place", word, known(Spot.PLACE)));
            }
            place = Optional.of(word);
        }
        if (tree.has(CHECK_FOR) && !AIMS.contains(tree.path(CHECK_FOR).asString(""))) {
            problems.add(unknown("/" + CHECK_FOR, tree.path(CHECK_FOR).asString(""), new TreeSet<>(AIMS)));
        }
        if (tree.has("contaminant")) {
            problems.add(Problem.said("/contaminant", "contaminant-is-asked"));
        }
        if (!problems.isEmpty()) {
            throw new BadQuestion(problems);
        }
        return new Spot(question.orElseThrow(), place, surroundings, tree.path(CHECK_FOR).asString("").equals(NAME));
    }

    private Optional<Question> question(JsonNode tree) {
        JsonNode rest = tree;
        if (tree.isObject()) {
            ObjectNode copy = ((ObjectNode) tree).deepCopy();
            OWN.forEach(copy::remove);
            rest = copy;
        }
        try {
            return Optional.of(QuestionReader.read(rest, base));
        } catch (BadQuestion bad) {
            if (!tree.isObject()) {
                throw bad;
            }
            problems.addAll(bad.problems());
            return Optional.empty();
        }
    }

    private Set<String> known(String prefix) {
        Set<String> known = new TreeSet<>();
        base.observations().keySet().stream().filter(o -> o.startsWith(prefix))
                .forEach(o -> known.add(o.substring(prefix.length())));
        return known;
    }

    private List<String> words(JsonNode tree, String field, String prefix, Set<String> known) {
        JsonNode list = tree.path(field);
        List<String> words = new ArrayList<>();
        if (!list.isMissingNode() && !list.isArray()) {
            problems.add(Problem.said("/" + field, "no-list"));
            return words;
        }
        for (int i = 0; i < list.size(); i++) {
            String word = list.path(i).asString("");
            if (!known.contains(word)) {
                problems.add(unknown("/" + field + "/" + i, word, known));
            }
            words.add(word);
        }
        return words;
    }

    private static Problem unknown(String pointer, String word, Set<String> known) {
        String near = Near.to(word, known);
        return near.startsWith("did") || known.size() > 40 ? Problem.said(pointer, "unknown", "word", word, "near", near)
                : Problem.said(pointer, "unknown-of-few", "word", word, "words", String.join(", ", known));
    }
}
