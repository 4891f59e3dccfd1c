package rungwise;

import java.util.Optional;
import rungwise.knowledge.load.Mappers;
import rungwise.question.BadQuestion;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A question less one of its facts. */
public final class Without {
    private Without() {
    }

    /** The same question without one fact; without what it stands in, where that cannot be without it. */
    public static Question fact(Question question, String pointer) {
        ObjectNode tree = Mappers.json().valueToTree(question);
        JsonPointer at = JsonPointer.compile(pointer);
        for (JsonPointer there = at; ; there = there.head()) {
            Optional<Question> less = less(tree.deepCopy(), there);
            if (less.isPresent()) {
                return less.get();
            }
        }
    }

    private static Optional<Question> less(ObjectNode tree, JsonPointer there) {
        JsonNode parent = tree.at(there.head());
        if (parent instanceof ArrayNode array) {
            array.remove(there.last().getMatchingIndex());
        } else {
            ((ObjectNode) parent).remove(there.last().getMatchingProperty());
        }
        try {
            return Optional.of(QuestionReader.read(tree, Base.advisor().knowledge()));
        } catch (BadQuestion needed) {
            return Optional.empty();
        }
    }
}
