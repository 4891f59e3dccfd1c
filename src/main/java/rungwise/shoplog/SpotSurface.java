package rungwise.shoplog;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import rungwise.question.Problem;
import rungwise.question.Question;
import tools.jackson.databind.JsonNode;

/** What a spot lies on: what was tried on something else was not tried on it. */
public final class SpotSurface {
    private static final String SURFACE = "surface";

    private SpotSurface() {
    }

    /** The surfaces that a question names; none where they are unknown. */
    public static Set<String> of(JsonNode question) {
        JsonNode told = question.path(SURFACE);
        return (told.isArray() ? told.valueStream() : Stream.of(told)).filter(JsonNode::isString).map(JsonNode::stringValue)
                .filter(id -> !id.equals(Question.UNKNOWN)).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Says that an attempt was made elsewhere than the spot lies. */
    public static Problem another(String spot, Set<String> known, Set<String> told) {
        return Problem.said("/" + SURFACE, "on-another-surface", "spot", spot, "known", String.join(" + ", known), "told",
                told.isEmpty() ? Question.UNKNOWN : String.join(" + ", told));
    }

    /**
     * Looks at an attempt that names a spot that is kept: a surface the spot was never said to lie on is another spot's.
     *
     * @throws BadAttempt where it is
     */
    static void check(Handle handle, Attempt attempt) {
        if (attempt.spot().filter(SpotName::isOurs).isEmpty()) {
            return;
        }
        String spot = attempt.spot().get();
        Set<String> told = new HashSet<>(attempt.surface());
        told.remove(Question.UNKNOWN);
        Set<String> known = new TreeSet<>();
        SpotStore.told(handle, spot).forEach(question -> known.addAll(of(question)));
        if (!known.isEmpty() && !known.containsAll(told)) {
            throw new BadAttempt(List.of(another(spot, known, told)));
        }
    }
}
