package rungwise.shoplog;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import rungwise.question.Problem;
import rungwise.text.Near;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/**
 * That an attempt is to be taken back.
 *
 * @param attempt its id, or a beginning of it that no other attempt on the spot has
 * @param by      who takes it back
 */
public record UndoOrder(String attempt, String by, String why) {
    private static final List<String> FIELDS = List.of("attempt", "why", "by");
    private static final Pattern MARK = Pattern.compile("[0-9a-f-]{4,36}");
    private static final String HERE = "here";
    private static final int WHY_CHARACTERS = 1_000;

    /**
     * Reads it.
     *
     * @throws BadAttempt with all that is wrong
     */
    public static UndoOrder read(JsonNode tree) {
        if (!tree.isObject()) {
            throw new BadAttempt(List.of(Problem.said("", "no-undoing", "kind", tree.getNodeType().toString().toLowerCase(Locale.ROOT))));
        }
        List<Problem> problems = new ArrayList<>();
        tree.propertyNames().stream().filter(name -> !FIELDS.contains(name)).forEach(name -> problems.add(Problem.said(
                "/" + name.replace("~", "~0").replace("/", "~1"), "no-field", "field", name, "near", Near.among(name, FIELDS, Texts.said("near.fields")))));
        Optional<String> attempt = text(tree, "attempt", "undoing-what", problems).map(mark -> mark.toLowerCase(Locale.ROOT));
        Optional<String> why = text(tree, "why", "undoing-why", problems);
        Optional<String> by = tree.path("by").isMissingNode() ? Optional.of(HERE) : text(tree, "by", "no-short-name", problems);
        attempt.filter(mark -> !MARK.matcher(mark).matches()).ifPresent(mark -> problems.add(Problem.said("/attempt", "no-mark", "mark", mark)));
        AttemptReader.text("/why", why, WHY_CHARACTERS, problems);
        AttemptReader.name("/by", by, problems);
        if (!problems.isEmpty()) {
            throw new BadAttempt(problems);
        }
        return new UndoOrder(attempt.orElseThrow(), by.orElseThrow(), why.orElseThrow());
    }

    private static Optional<String> text(JsonNode tree, String field, String wrong, List<Problem> problems) {
        Optional<String> text = Optional.of(tree.path(field)).filter(JsonNode::isString).map(JsonNode::stringValue).filter(t -> !t.isBlank());
        if (text.isEmpty()) {
            problems.add(Problem.said("/" + field, wrong));
        }
        return text;
    }
}
