package rungwise.question;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * The facts that a question gave, each by its JSON Pointer. What says no more than leaving it out would is not given. A list
 * counts word by word, but a shelf, a reading, a bay and a bottle each as one.
 */
public final class FactsGiven {
    private static final ObjectMapper MAPPER = Mappers.json();
    private static final Set<String> WHOLE = Set.of("/shelf", "/facts/totalFilmMicrons", "/setting/indoors", "/mixing");
    /** Said, even where it says what would be assumed: somebody is on the job, something was tried and ended so. */
    private static final Set<String> ALWAYS = Set.of("/workers/*/level", "/tried/*/outcome");
    private static final String EACH = "*";

    private FactsGiven() {
    }

    /** The pointers, in the order of the question. */
    public static List<String> of(Question question) {
        Set<String> given = new LinkedHashSet<>();
        collect(MAPPER.valueToTree(question), MAPPER.valueToTree(nothing()), "", "", given);
        return List.copyOf(given);
    }

    /** A question that says nothing, with one of each thing of which there may be several. */
    private static Question nothing() {
        return new Question(Optional.empty(), null, null, null, null, null, null, null, null, null, List.of(new Question.Worker(null, null)),
                null, false, null, null, 0, null, null, List.of(new Question.Tried(null, null, null, null, 0, 0, 0, null, null)), null);
    }

    private static void collect(JsonNode node, JsonNode nothing, String pointer, String kind, Set<String> given) {
        if (WHOLE.contains(pointer)) {
            given.add(pointer);
        } else if (node.isObject()) {
            node.propertyStream().forEach(p -> collect(p.getValue(), nothing.path(p.getKey()), pointer + "/" + p.getKey(),
                    kind + "/" + p.getKey(), given));
        } else if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                collect(node.get(i), nothing.path(0), pointer + "/" + i, kind + "/" + EACH, given);
            }
        } else if (ALWAYS.contains(kind) || !node.equals(nothing)) {
            given.add(pointer);
        }
    }

    /** A pointer with each place in a list as {@code *}: the field that it is, whichever of them. */
    static String kind(String pointer) {
        List<String> steps = new ArrayList<>();
        for (String step : pointer.substring(1).split("/")) {
            steps.add(step.chars().allMatch(Character::isDigit) ? EACH : step);
        }
        return "/" + String.join("/", steps);
    }

    /** The place in a list that a pointer names, the outer one where there are two. */
    static int place(String pointer) {
        for (String step : pointer.substring(1).split("/")) {
            if (step.chars().allMatch(Character::isDigit)) {
                return Integer.parseInt(step);
            }
        }
        throw new IllegalArgumentException("no list in " + pointer);
    }
}
