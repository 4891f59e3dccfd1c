package rungwise.ask;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What was told so far.
 *
 * @param tree  the question that it makes
 * @param asked what was asked, whether anybody knew it or not
 * @param heard what was said before it was asked, so that it need not be
 */
public record Told(ObjectNode tree, List<String> asked, List<String> heard) {
    static final String SURFACE = "surface";
    static final String DEPOSIT = "contaminant";
    static final String TRIED = "tried";
    /** What a try did, of which only was said that it was made. */
    static final String OUTCOME = "outcome";
    static final JsonNode NOTHING = JsonNodeFactory.instance.objectNode();
    /** What counts for such a try until somebody says more. */
    private static final String NOTHING_SEEN = "no-change";

    public Told {
        tree = tree.deepCopy();
        asked = List.copyOf(asked);
        heard = List.copyOf(heard);
    }

    static Told nothing() {
        return new Told(JsonNodeFactory.instance.objectNode(), List.of(), List.of());
    }

    /** The same after a question that nobody could answer. */
    Told unknown(String id) {
        return with(id, JsonNodeFactory.instance.objectNode());
    }

    /** The same after a question, with what its answer adds. */
    Told with(String id, JsonNode more) {
        ObjectNode whole = tree.deepCopy();
        merge(whole, more);
        return new Told(whole, asked.contains(id) ? asked : Stream.concat(asked.stream(), Stream.of(id)).toList(), heard);
    }

    /** The same with what was said of something before it was asked. */
    Told hearing(String id, JsonNode more) {
        ObjectNode whole = tree.deepCopy();
        merge(whole, more);
        return new Told(whole, asked, heard.contains(id) ? heard : Stream.concat(heard.stream(), Stream.of(id)).toList());
    }

    /** The same after a question, with a text or a list of them in one field. */
    Told with(String id, String field, List<String> words) {
        return with(id, field(field, words));
    }

    /** A text or a list of them in one field. */
    static ObjectNode field(String field, List<String> words) {
        ObjectNode more = JsonNodeFactory.instance.objectNode();
        if (words.size() == 1) {
            more.put(field, words.get(0));
        } else {
            words.forEach(more.putArray(field)::add);
        }
        return more;
    }

    /** Tries as they stand in a question. */
    static ArrayNode tries(List<TriesTold.One> tries) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        tries.forEach(one -> all.addObject().put("text", one.text()).put(OUTCOME, one.outcome().orElse(NOTHING_SEEN)));
        return all;
    }

    /** The same with tries that were told unasked; how they ended counts as told where it was said of each. */
    Told trying(List<TriesTold.One> tries) {
        ObjectNode more = JsonNodeFactory.instance.objectNode();
        if (!tries.isEmpty()) {
            more.set(TRIED, tries(tries));
        }
        Told told = hearing(TRIED, more);
        return tries.stream().allMatch(one -> one.outcome().isPresent()) ? told.hearing(OUTCOME, NOTHING) : told;
    }

    /** What was put on last, where nobody said yet what it did. */
    Optional<String> openTry() {
        JsonNode tries = tree.path(TRIED);
        return wasAsked(OUTCOME) || tries.isEmpty() ? Optional.empty() : Optional.of(tries.get(tries.size() - 1).path("text").asString());
    }

    /** The same after it was said how the last try ended. */
    Told ended(String outcome) {
        ObjectNode whole = tree.deepCopy();
        ArrayNode tries = (ArrayNode) whole.get(TRIED);
        ((ObjectNode) tries.get(tries.size() - 1)).put(OUTCOME, outcome);
        return new Told(whole, asked, heard).unknown(OUTCOME);
    }

    private static void merge(ObjectNode into, JsonNode more) {
        more.propertyStream().forEach(p -> {
            JsonNode there = into.get(p.getKey());
            if (there instanceof ObjectNode object && p.getValue().isObject()) {
                merge(object, p.getValue());
            } else if (there instanceof ArrayNode array && p.getValue().isArray()) {
                p.getValue().forEach(array::add);
            } else {
                into.set(p.getKey(), p.getValue().deepCopy());
            }
        });
    }

    /** Whether it was asked, or need not be. */
    boolean wasAsked(String id) {
        return asked.contains(id) || heard.contains(id);
    }

    /** Whether somebody said what it is. */
    boolean isNamed() {
        return tree.has(DEPOSIT);
    }

    Question question(KnowledgeBase base) {
        return QuestionReader.read(tree, base);
    }
}
