package rungwise.question;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import rungwise.text.Texts;
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
        return e instanceof MismatchedInputException mismatch
                ? Problem.said(pointer, "other-kind", "found", found(found), "wanted", wanted(mismatch.getTargetType()))
                : Problem.said(pointer, "no-such-kind", "found", found(found));
    }

    private static String found(JsonNode node) {
        return switch (node.getNodeType()) {
            case ARRAY -> say("list");
            case OBJECT -> say("object");
            case STRING -> say("the-text", "text", node.stringValue());
            case NUMBER -> say("the-number", "number", node.toString());
            case BOOLEAN -> node.toString();
            default -> say("unreadable");
        };
    }

    private static String wanted(Class<?> type) {
        if (type.isRecord()) {
            return say("object-of", "fields", Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName)
                    .collect(Collectors.joining(", ")));
        }
        if (type.isEnum()) {
            return say("one-of", "words", Arrays.stream(type.getEnumConstants()).map(c -> c.toString().toLowerCase(Locale.ROOT))
                    .collect(Collectors.joining(", ")));
        }
        if (Collection.class.isAssignableFrom(type)) {
            return say("list");
        }
        if (Map.class.isAssignableFrom(type)) {
            return say("object");
        }
        if (type == boolean.class || type == Boolean.class) {
            return say("true-or-false");
        }
        if (type == OptionalInt.class) {
            return say("whole-number");
        }
        if (type == OptionalDouble.class || type.isPrimitive()) {
            return say("number");
        }
        // of other fields that may be left out the reader knows no more
        return say(type == String.class ? "text" : "single-value");
    }

    private static String say(String kind, Object... named) {
        return Texts.said("kind." + kind, named);
    }
}
