package rungwise.question;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Listed;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.words.QuestionWords;
import tools.jackson.databind.JsonNode;

/**
 * The fields of a question in which only certain words may stand. A word that means something to nobody is refused, so that
 * no fact falls silent; a word said another way is read as the word that it means.
 */
public final class ClosedLists {
    private final KnowledgeBase base;
    private final Map<String, Field> byPointer = new TreeMap<>();

    /** The ids that may stand in a field, and, where none of them does, every way to say one. */
    private record Field(Collection<String> ids, Supplier<WordList> words) {
        static Field of(Map<String, ? extends Listed> words) {
            return new Field(words.keySet(), () -> WordList.of(words.values()));
        }

        static Field ofIds(Collection<String> ids) {
            return new Field(ids, () -> WordList.ofIds(ids));
        }

        Field and(Field other) {
            return new Field(Stream.concat(ids.stream(), other.ids.stream()).toList(), () -> words.get().and(other.words.get()));
        }
    }

    public ClosedLists(KnowledgeBase base) {
        this.base = base;
        QuestionWords words = base.questionWords();
        byPointer.put("/circumstances/*", new Field(base.circumstances().keySet(), () -> circumstances(base)));
        byPointer.put("/done/*", Field.of(words.done()).and(Field.ofIds(gates(base, false))));
        byPointer.put("/facts/place", Field.of(words.places()));
        byPointer.put("/facts/priorDamage/*", Field.of(words.priorDamage()));
        byPointer.put("/facts/protection", Field.of(words.protections()));
        byPointer.put("/facts/soiling", Field.of(words.soiling()));
        byPointer.put("/facts/colour", Field.of(words.colours()));
        byPointer.put("/setting/sun", Field.of(words.sun()));
        byPointer.put("/tried/*/outcome", Field.of(words.outcomes()));
        byPointer.put("/tried/*/signs/*", Field.of(words.stopSigns()));
        byPointer.put("/workers/*/level", Field.ofIds(levels(base)));
    }

    /** The words that may stand in a field, by id. */
    public List<String> words(String pointer) {
        return List.copyOf(byPointer.get(pointer).ids());
    }

    /** The fields, each list of a field as {@code *}. */
    public List<String> fields() {
        return List.copyOf(byPointer.keySet());
    }

    /** Levels of people on the job; an outside contractor is not on it. */
    private static List<String> levels(KnowledgeBase base) {
        return base.levels().keySet().stream().filter(level -> level.startsWith("L")).toList();
    }

    private static WordList circumstances(KnowledgeBase base) {
        return WordList.ofIds(base.circumstances().keySet()).alsoSaid(base.circumstances().values().stream()
                .map(one -> Map.entry(one.name(), one.id())).toList());
    }

    private static List<String> gates(KnowledgeBase base, boolean questions) {
        return base.gates().values().stream().filter(g -> g.asks() == questions).map(Gate::id).toList();
    }

    /** The same tree with each word as its id; what is no word is told as a problem. */
    JsonNode read(JsonNode tree, List<Problem> problems) {
        JsonNode copy = tree.deepCopy();
        byPointer.forEach((pointer, field) -> Fields.reword(copy, pointer, (here, word) -> field.ids().contains(word)
                ? Optional.empty() : read(here, word, field.words().get(), problems)));
        return copy;
    }

    private Optional<String> read(String pointer, String word, WordList list, List<Problem> problems) {
        Optional<String> id = list.id(word);
        if (id.isEmpty()) {
            problems.add(problem(pointer, word, list));
        }
        return id;
    }

    private Problem problem(String pointer, String word, WordList list) {
        boolean asks = pointer.startsWith("/done/") && gates(base, true).contains(word);
        return asks ? Problem.said(pointer, "question-not-done", "word", word, "obtain", base.gates().get(word).obtain()) : list.problem(pointer, word);
    }

    /** Gates that somebody can agree to, and methods, with all that they need. */
    static List<String> agreeable(KnowledgeBase base) {
        return Stream.concat(base.gates().values().stream().filter(Gate::needsAgreement).map(Gate::id),
                base.methods().keySet().stream()).toList();
    }
}
