package rungwise.practice;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.load.Mappers;
import rungwise.question.QuestionReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An answer as the one who works reads it: what to do now, and which methods stand where. The one place of this package
 * that knows how an answer is built.
 *
 * @param action  what the next step is
 * @param method  the method that the next step names
 * @param before  the steps before the first rung
 * @param around  those before any rung
 * @param marks   what corrects a mark once the deposit is off
 * @param wayOut  who takes over
 * @param words   all that it says of what is done, in lower case
 * @param left    where a method went that is left out, and by which reasons
 */
record Printed(String action, Optional<String> method, List<String> before, List<String> around, List<String> rungs,
               List<String> alternatives, List<String> marks, List<String> after, String wayOut, String words, Map<String, String> left) {
    private static final JsonNode DOES = Trade.map(Path.of("src/test/resources/expert-ladders"), "does.yaml");
    /** Actions that start the work on a rung; the others keep hands off or call somebody. */
    private static final Set<String> DOING = Set.of("try", "test", "prepare", "repeat");
    /** What was asked, what is left out, and why: no word of these says what to do. */
    private static final Set<String> NOT_DONE = Set.of("question", "facts", "never", "notNow", "usedUp", "passedOver", "because", "reasons");

    static Printed of(JsonNode question) {
        Answer answer = Base.advisor().answer(QuestionReader.read(question, Base.advisor().knowledge()));
        StringBuilder words = new StringBuilder();
        JsonNode tree = Mappers.json().valueToTree(answer);
        collect(tree, words);
        return new Printed(answer.next().action(), answer.next().method(), steps(answer.before().stream().filter(b -> isForFirst(b, answer))),
                steps(answer.before().stream()),
                answer.rungs().stream().map(Answer.Rung::method).toList(),
                answer.alternatives().stream().map(Answer.Alternative::method).toList(),
                steps(answer.rungs().stream().flatMap(r -> r.ifMarked().stream())),
                steps(answer.after().stream()), answer.whoTakesOver().map(Answer.WayOut::method).orElse(""), words.toString().toLowerCase(Locale.ROOT), left(tree));
    }

    /**
     * The answer to work by: where minutes count the card is first aid alone, and the ladder is what it says once that was
     * done to no avail.
     */
    static Printed worked(ObjectNode question) {
        Printed now = of(question);
        if (!now.action.equals("flush") || now.method.isEmpty()) {
            return now;
        }
        ObjectNode later = question.deepCopy();
        later.withArray("tried").addObject().put("method", now.method.get()).put("outcome", "no-change").put("hoursAgo", 0.1);
        Printed then = of(later);
        return new Printed(now.action, now.method, then.before, Stream.concat(now.around.stream(), then.around.stream()).toList(),
                Stream.concat(now.method.stream(), then.rungs.stream()).distinct().toList(), then.alternatives, then.marks,
                Stream.concat(now.after.stream(), then.after.stream()).distinct().toList(), then.wayOut, now.words + then.words, then.left);
    }

    /** What only a later rung asks for comes before that one. */
    private static boolean isForFirst(Answer.Around step, Answer answer) {
        return step.forRungs().isEmpty() || answer.rungs().stream().findFirst().filter(r -> step.forRungs().contains(r.method())).isPresent();
    }

    private static Map<String, String> left(JsonNode answer) {
        Map<String, String> left = new TreeMap<>();
        for (String where : List.of("never", "notNow", "usedUp", "passedOver")) {
            answer.path(where).forEach(m -> left.put(m.path("method").asString(), where + " by " + m.path("because").valueStream()
                    .map(b -> b.path("reason").asString()).distinct().toList()));
        }
        return left;
    }

    private static List<String> steps(Stream<Answer.Around> steps) {
        return steps.map(Answer.Around::step).distinct().toList();
    }

    private static void collect(JsonNode node, StringBuilder words) {
        if (node.isString()) {
            words.append(node.asString()).append('\n');
        }
        node.forEachEntry((key, value) -> {
            if (!NOT_DONE.contains(key)) {
                collect(value, words);
            }
        });
        if (node.isArray()) {
            node.forEach(one -> collect(one, words));
        }
    }

    boolean works() {
        return DOING.contains(action);
    }

    /** The method of the first step on the deposit itself; empty where hands are kept off. */
    Optional<String> first() {
        if (!works()) {
            return action.equals("flush") ? method : Optional.empty();
        }
        return rungs.isEmpty() ? method : Optional.of(rungs.get(0));
    }

    /** The rungs, then what is named beside them. */
    List<String> offered() {
        return Stream.concat(rungs.stream(), alternatives.stream()).toList();
    }

    /** In the order of the work: steps before, then rungs. */
    List<String> sequence() {
        return Stream.concat(before.stream().filter(step -> !rungs.contains(step)), rungs.stream()).toList();
    }

    /** All methods that the answer names for use. */
    List<String> anywhere() {
        return Stream.of(around.stream(), rungs.stream(), alternatives.stream(), marks.stream(), after.stream(),
                method.stream(), Stream.of(wayOut)).flatMap(s -> s).distinct().toList();
    }

    /** The same, and what a step around the rungs does as well as a method would. */
    List<String> done() {
        return anywhere().stream().flatMap(step -> Stream.of(step, DOES.path(step).asString(step))).distinct().toList();
    }

    /** Where a method is that is no rung, as words to add to its name. */
    String where(String missing) {
        return done().contains(missing) ? ", done around the rungs" : ", " + left.getOrDefault(missing, "not thought of");
    }
}
