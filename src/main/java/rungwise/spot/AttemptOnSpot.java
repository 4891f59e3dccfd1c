package rungwise.spot;

import java.lang.reflect.RecordComponent;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.Subject;
import rungwise.question.BadQuestion;
import rungwise.question.Named;
import rungwise.question.Problem;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.AttemptReader;
import rungwise.shoplog.BadAttempt;
import rungwise.shoplog.Said;
import rungwise.shoplog.SpotSurface;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An attempt as it is told of a spot: what the log asks for and the spot knows already is filled in, and fields of a question
 * are what became known beside it.
 *
 * @param attempt for the log
 * @param said    for the spot
 */
record AttemptOnSpot(Attempt attempt, Said said) {
    /** Those of a question and those of an attempt alike: told of the spot, and read with the attempt. */
    private static final List<String> SHARED = List.of("contaminant", "age", "surface", "facts", "setting");
    private static final String TRIED = "tried";
    private static final String SURFACE = "surface";
    private static final List<String> FACTS = Arrays.stream(Question.class.getRecordComponents()).map(RecordComponent::getName)
            .filter(name -> !name.equals(TRIED)).toList();
    /** Said of a try in a question, and no field of an attempt. */
    private static final List<String> OF_A_TRY = List.of("dwellMinutes", "signs");
    private static final List<String> THE_SPOTS = List.of("id", "spot", TRIED);
    private static final String ONE = "/" + TRIED + "/0";

    /**
     * Reads it.
     *
     * @param spot   its id
     * @param known  the spot's question at a moment, after what is told with the attempt
     * @throws BadAttempt with all that is wrong
     */
    static AttemptOnSpot read(JsonNode body, String spot, KnowledgeBase base, AttemptReader reader, Known known) {
        if (!(body instanceof ObjectNode sent)) {
            throw new BadAttempt(List.of(Problem.said("", "no-attempt-on-a-spot", "kind",
                    body.getNodeType().toString().toLowerCase(Locale.ROOT))));
        }
        List<Problem> problems = new ArrayList<>();
        THE_SPOTS.stream().filter(sent::has).forEach(f -> problems.add(Problem.said("/" + f, "the-spot-says-it", "field", f)));
        ObjectNode rest = sent.deepCopy();
        rest.remove(THE_SPOTS);
        ObjectNode told = moved(rest, FACTS);
        ObjectNode of = moved(rest, OF_A_TRY);
        checked(() -> QuestionReader.read(told, base), Function.identity(), problems);
        ObjectNode tries = asTried(of);
        checked(() -> QuestionReader.read(tries, base), p -> new Problem(p.pointer().startsWith(ONE)
                ? p.pointer().substring(ONE.length()) : p.pointer(), p.wrong(), p.remedy(), p.choices()), problems);
        if (!problems.isEmpty()) {
            checked(rest.deepCopy().put("contaminant", Question.UNKNOWN), reader, problems);
            throw new BadAttempt(problems);
        }
        ObjectNode facts = (ObjectNode) Named.inIds(told, base);
        // when it was made says how old the deposit was then, and the reader says when it was made
        Instant at = reader.read(rest.deepCopy().put("contaminant", Question.UNKNOWN)).at();
        Said said = said(at, facts, Named.inIds(tries, base).at(ONE));
        onIt(spot, facts, known.at(at, said(at, without(facts, SURFACE), Mappers.json().createObjectNode())));
        ObjectNode whole = rest.deepCopy().put("at", at.toString()).put("spot", spot).put("contaminant", Question.UNKNOWN);
        ObjectNode question = known.at(at, said);
        SHARED.stream().filter(question::has).forEach(f -> whole.set(f, question.get(f)));
        Attempt onDeposit = reader.read(whole);
        // once the deposit is off and a mark shows, what is tried is tried on the mark
        Attempt attempt = Subject.mark(QuestionReader.read(question, base), base)
                .map(mark -> reader.read(whole.put("contaminant", mark))).orElse(onDeposit);
        return new AttemptOnSpot(attempt, new Said(at, Optional.of(attempt.id()), said.told(), said.dwellMinutes(), said.signs()));
    }

    /** What was tried elsewhere says nothing of this spot, and least of all that it is off. */
    private static void onIt(String spot, ObjectNode facts, ObjectNode before) {
        Set<String> known = SpotSurface.of(before);
        Set<String> told = SpotSurface.of(facts);
        if (facts.has(SURFACE) && !known.isEmpty() && !told.equals(known)) {
            throw new BadAttempt(List.of(SpotSurface.another(spot, known, told)));
        }
    }

    private static ObjectNode without(ObjectNode facts, String field) {
        ObjectNode rest = facts.deepCopy();
        rest.remove(field);
        return rest;
    }

    /** What a spot asks at a moment. */
    interface Known {
        ObjectNode at(Instant moment, Said also);
    }

    private static ObjectNode moved(ObjectNode from, List<String> fields) {
        ObjectNode moved = from.objectNode();
        fields.forEach(f -> Optional.ofNullable(from.remove(f)).ifPresent(value -> moved.set(f, value)));
        return moved;
    }

    /** In the form in which a question reads it. */
    private static ObjectNode asTried(ObjectNode of) {
        ObjectNode tries = Mappers.json().createObjectNode();
        tries.putArray(TRIED).add(of.deepCopy().put("text", TRIED).put("outcome", "partly"));
        return tries;
    }

    private static void checked(Runnable reading, Function<Problem, Problem> where, List<Problem> problems) {
        try {
            reading.run();
        } catch (BadQuestion bad) {
            bad.problems().stream().map(where).forEach(problems::add);
        }
    }

    private static void checked(JsonNode rest, AttemptReader reader, List<Problem> problems) {
        try {
            reader.read(rest);
        } catch (BadAttempt bad) {
            problems.addAll(bad.problems());
        }
    }

    private static Said said(Instant at, ObjectNode facts, JsonNode tried) {
        JsonNode minutes = tried.path("dwellMinutes");
        return new Said(at, Optional.empty(), facts, minutes.isMissingNode() || minutes.isNull() ? OptionalDouble.empty()
                : OptionalDouble.of(minutes.asDouble()), tried.path("signs").valueStream().map(JsonNode::asString).toList());
    }
}
