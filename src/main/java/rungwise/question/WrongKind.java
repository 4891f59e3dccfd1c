package rungwise.question;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.exc.MismatchedInputException;

/** Says in plain words that a value of one kind stands where another belongs; the reader's own words name its classes. */
public final class WrongKind {
    private WrongKind() {
    }

    /** Where in the tree it stands, as a JSON Pointer. */
    public static String pointer(JacksonException e) {
        return e.getPath().stream().map(p -> "/" + (p.getPropertyName() == null ? "" + p.getIndex()
                : p.getPropertyName().replace("~", "~0").replace("/", "~1"))).collect(Collectors.joining());
    }

    /**
     * The problem.
     *
     * @param tree what was read
     * @param e    what the reader said of it
     */
    public static Problem in(JsonNode tree, JacksonException e) {
        String pointer = pointer(e);
        JsonNode found = tree.at(pointer);
        return new Problem(pointer, found(found) + " stands here",
                e instanceof MismatchedInputException mismatch ? "write " + wanted(mismatch.getTargetType())
                        : "compare it with a question in demo-data/spots");
    }

    private static String found(JsonNode node) {
        return switch (node.getNodeType()) {
            case ARRAY -> "a list";
            case OBJECT -> "an object";
            case STRING -> "the text \"" + node.stringValue() + "\"";
            case NUMBER -> "the number " + node;
            case BOOLEAN -> node.toString();
            default -> "what cannot be read";
        };
    }

    private static String wanted(Class<?> type) {
        if (type.isRecord()) {
            return "an object with fields out of " + Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName)
                    .collect(Collectors.joining(", "));
        }
        if (type.isEnum()) {
            return "one of " + Arrays.stream(type.getEnumConstants()).map(c -> c.toString().toLowerCase(Locale.ROOT))
                    .collect(Collectors.joining(", "));
        }
        if (Collection.class.isAssignableFrom(type)) {
            return "a list";
        }
        if (Map.class.isAssignableFrom(type)) {
            return "an object";
        }
        if (type == boolean.class || type == Boolean.class) {
            return "true or false";
        }
        if (type == OptionalInt.class) {
            return "a whole number";
        }
        if (type == OptionalDouble.class || type.isPrimitive()) {
            return "a number";
        }
        // of other fields that may be left out the reader knows no more
        return type == String.class ? "text" : "a single value";
    }
}
