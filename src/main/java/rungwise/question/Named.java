package rungwise.question;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.names.Called;
import rungwise.names.Names;
import rungwise.names.PlainAges;
import rungwise.names.Vocabulary;
import rungwise.names.Whereabouts;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The fields of a question that name entries or say an age: whatever the trade calls an entry is read as its id, and a plain
 * age as a duration, so that all that follows sees only these. What is unknown or too wide is refused and never guessed.
 */
public final class Named {
    private final KnowledgeBase base;
    private final Vocabulary vocabulary;
    private final Map<String, Field> byPointer = new LinkedHashMap<>();
    /** Names are many, and most questions say ids: they are gathered for the first word of a field that is none. */
    private final Map<Field, Names> gathered = new HashMap<>();

    /**
     * Ids that need no reading, and what else may stand there.
     *
     * @param here of what a wide word may mean, what may be meant where the spot is
     */
    private record Field(Set<String> ids, Function<Vocabulary, Names> names, BiFunction<Whereabouts, List<Called>, List<Called>> here) {
        Field(Set<String> ids, Function<Vocabulary, Names> names) {
            this(ids, names, (where, mayBe) -> mayBe);
        }

        static Field of(Function<Vocabulary, Names> names, List<Set<String>> ids) {
            Set<String> all = new HashSet<>();
            ids.forEach(all::addAll);
            return new Field(all, names);
        }
    }

    public Named(KnowledgeBase base) {
        this.base = base;
        this.vocabulary = new Vocabulary(base);
        Field surfaces = new Field(base.surfaces().keySet(), Vocabulary::surfaces, Whereabouts::surfaces);
        Field methods = new Field(base.methods().keySet(), Vocabulary::methods);
        Field agreed = Field.of(Vocabulary::consent, List.of(base.methods().keySet(), base.gates().keySet()));
        byPointer.put("/surface", surfaces);
        byPointer.put("/surface/*", surfaces);
        // after the surface, which tells what a wide word may mean
        byPointer.put("/contaminant", new Field(base.contaminants().keySet(), Vocabulary::deposits, Whereabouts::deposits));
        byPointer.put("/neighbours/*", new Field(base.surfaces().keySet(), Vocabulary::surfaces));
        byPointer.put("/shelf/*", Field.of(Vocabulary::shelf, List.of(base.agents().keySet(), base.tools().keySet(),
                base.methods().keySet())));
        byPointer.put("/wanted/*", methods);
        byPointer.put("/passedTests/*", methods);
        byPointer.put("/tried/*/method", methods);
        byPointer.put("/tried/*/substance", new Field(base.agents().keySet(), Vocabulary::agents));
        byPointer.put("/consent/granted/*", agreed);
        byPointer.put("/consent/refused/*", agreed);
    }

    /** The same tree in ids; what cannot be read is told as a problem. */
    JsonNode read(JsonNode tree, List<Problem> problems) {
        JsonNode copy = tree.deepCopy();
        together(copy, "surface");
        together(copy, "neighbours");
        byPointer.forEach((pointer, field) -> Fields.reword(copy, pointer, (here, word) -> word.equals(Question.UNKNOWN)
                || field.ids().contains(word) ? Optional.empty() : read(here, word, field, copy, problems)));
        Fields.reword(copy, "/age", (here, said) -> age(here, said, problems));
        return copy;
    }

    /** A place with its usual material stands for each that it may be, so that the most delicate of them counts. */
    private void together(JsonNode tree, String list) {
        JsonNode said = tree.path(list);
        List<String> words = (said.isArray() ? said.valueStream() : Stream.of(said)).filter(JsonNode::isString).map(JsonNode::asString).toList();
        Field field = byPointer.get("/surface");
        if (words.isEmpty() || said.isArray() && words.size() < said.size() || words.stream().allMatch(field.ids()::contains)) {
            return;
        }
        Names names = gathered.computeIfAbsent(field, f -> f.names().apply(vocabulary));
        if (words.stream().anyMatch(names::isTogether)) {
            ArrayNode all = ((ObjectNode) tree).putArray(list);
            words.stream().flatMap(w -> names.isTogether(w) ? names.mayBe(w).stream().map(Called::id) : Stream.of(w)).distinct().forEach(all::add);
        }
    }

    /** Where the spot is, as far as that is read by now. */
    private Whereabouts whereabouts(JsonNode tree) {
        JsonNode surface = tree.path("surface");
        Stream<JsonNode> told = surface.isArray() ? surface.valueStream() : Stream.of(surface);
        return new Whereabouts(told.filter(JsonNode::isString).map(JsonNode::asString).filter(base.surfaces()::containsKey).toList(),
                Optional.of(tree.path("facts").path("place")).filter(JsonNode::isString).map(JsonNode::asString).flatMap(said -> vocabulary.places().id(said)), base);
    }

    /** The id of a method that is named outside of a question. */
    public String method(String pointer, String word, List<Problem> problems) {
        return base.methods().containsKey(word) ? word
                : read(pointer, word, byPointer.get("/wanted/*"), MissingNode.getInstance(), problems).orElse(word);
    }

    private Optional<String> read(String pointer, String word, Field field, JsonNode tree, List<Problem> problems) {
        Names names = gathered.computeIfAbsent(field, f -> f.names().apply(vocabulary));
        List<Called> wide = names.mayBe(word, all -> field.here().apply(whereabouts(tree), all));
        Optional<String> id = names.id(word).or(() -> wide.size() == 1 ? Optional.of(wide.get(0).id()) : Optional.empty());
        if (id.isEmpty()) {
            problems.add(problem(pointer, word, names, wide));
        }
        return id;
    }

    private static Problem problem(String pointer, String word, Names names, List<Called> wide) {
        if (!wide.isEmpty()) {
            return new Problem(pointer, Texts.said("word.wide", "word", word), Texts.said("word.say-which", "near", shown(wide)),
                    choices(wide));
        }
        List<Called> near = names.nearest(word);
        return new Problem(pointer, Texts.said("word.unknown", "word", word), near.isEmpty() ? Texts.said("word.nothing-near")
                + (pointer.startsWith("/surface") ? ". " + Texts.said("word.tell-surface") : "")
                : Texts.said("word.nearest", "near", shown(near)), choices(near));
    }

    private static String shown(List<Called> things) {
        return things.stream().map(Called::shown).collect(Collectors.joining(", "));
    }

    private static List<Choice> choices(List<Called> things) {
        return things.stream().filter(t -> !t.tell().isEmpty()).map(t -> new Choice(t.id(), t.name(), t.tell())).toList();
    }

    private Optional<String> age(String pointer, String said, List<Problem> problems) {
        if (said.equals(Question.UNKNOWN) || Ages.isDuration(said)) {
            return Optional.empty();
        }
        PlainAges ages = vocabulary.ages();
        Optional<String> iso = ages.iso(said);
        if (iso.isEmpty()) {
            problems.add(Problem.said(pointer, "no-duration", "said", said));
        }
        return iso;
    }

    /** A tree whose words are all known, in ids; a word that nobody knows stays as it is. */
    public static JsonNode inIds(JsonNode tree, KnowledgeBase base) {
        return new ClosedLists(base).read(new Named(base).read(tree, new ArrayList<>()), new ArrayList<>());
    }
}
