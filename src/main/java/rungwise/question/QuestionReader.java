package rungwise.question;

import java.lang.reflect.RecordComponent;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Mappers;
import rungwise.knowledge.Near;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** Reads a question from a parsed tree and checks it against what is known. */
public final class QuestionReader {
    private static final ObjectMapper MAPPER = Mappers.json();
    private static final List<String> OUTCOMES = List.of("cleared", "partly", "no-change", "harm");
    private static final List<String> SUN = List.of("direct", "overcast", "shade");
    private static final List<String> LEVELS = List.of("L1", "L2", "L3", "L4");
    private static final List<String> SOILING = List.of("light", "heavy");
    private static final List<String> PROTECTION = List.of("none", "wax", "coating");
    private static final List<String> COLOURS = List.of("dark", "medium", "light");

    private final KnowledgeBase base;
    private final List<Problem> problems = new ArrayList<>();

    private QuestionReader(KnowledgeBase base) {
        this.base = base;
    }

    /**
     * The question.
     *
     * @throws BadQuestion where a field is unknown, of the wrong kind, out of range, or names what is not known
     */
    public static Question read(JsonNode tree, KnowledgeBase base) {
        if (!tree.isObject()) {
            throw new BadQuestion(List.of(new Problem("", "a question is an object with fields, this is "
                    + tree.getNodeType().toString().toLowerCase(java.util.Locale.ROOT),
                    "start with contaminant, age and surface")));
        }
        List<Problem> empty = new ArrayList<>();
        nulls(tree, "", empty);
        if (!empty.isEmpty()) {
            throw new BadQuestion(empty);
        }
        Question question;
        try {
            question = MAPPER.treeToValue(tree, Question.class);
        } catch (UnrecognizedPropertyException e) {
            List<String> fields = e.getReferringClass().isRecord()
                    ? Arrays.stream(e.getReferringClass().getRecordComponents()).map(RecordComponent::getName).toList()
                    : List.of();
            throw new BadQuestion(List.of(new Problem(WrongKind.pointer(e), "\"" + e.getPropertyName()
                    + "\" is not a field here", fields.isEmpty() ? "leave it out"
                    : Near.among(e.getPropertyName(), fields, "the fields are"))));
        } catch (JacksonException e) {
            throw new BadQuestion(List.of(WrongKind.in(tree, e)));
        }
        return new QuestionReader(base).checked(question);
    }

    /** A list of things holds things; what is unknown is left out. */
    private static void nulls(JsonNode tree, String at, List<Problem> empty) {
        for (int i = 0; tree.isArray() && i < tree.size(); i++) {
            if (tree.get(i).isNull()) {
                empty.add(new Problem(at + "/" + i, "null is nothing that a list can hold", "leave it out"));
            }
            nulls(tree.get(i), at + "/" + i, empty);
        }
        if (tree.isObject()) {
            tree.propertyStream().forEach(p -> nulls(p.getValue(), at + "/" + escaped(p.getKey()), empty));
        }
    }

    private static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    private Question checked(Question q) {
        q.contaminant().filter(c -> !c.equals(Question.UNKNOWN))
                .ifPresent(c -> known("/contaminant", List.of(c), base.contaminants().keySet(), false));
        known("/observations", q.observations(), base.observations().keySet(), true);
        age(q.age());
        if (!q.surface().contains(Question.UNKNOWN)) {
            known("/surface", q.surface(), base.surfaces().keySet(), q.surface().size() > 1);
        }
        known("/circumstances", q.circumstances(), base.circumstances().keySet(), true);
        known("/neighbours", q.neighbours(), base.surfaces().keySet(), true);
        Set<String> things = new HashSet<>(base.methods().keySet());
        things.addAll(base.agents().keySet());
        things.addAll(base.tools().keySet());
        q.shelf().ifPresent(s -> known("/shelf", s, things, true));
        Set<String> gatesAndMethods = new HashSet<>(base.methods().keySet());
        gatesAndMethods.addAll(base.gates().keySet());
        known("/consent/granted", q.consent().granted(), gatesAndMethods, true);
        known("/consent/refused", q.consent().refused(), gatesAndMethods, true);
        known("/passedTests", q.passedTests(), base.methods().keySet(), true);
        known("/wanted", q.wanted(), base.methods().keySet(), true);
        numbers(q);
        tried(q);
        q.setting().sun().ifPresent(sun -> word("/setting/sun", sun, SUN));
        if (q.setting().outdoors() && q.setting().indoors().isPresent()) {
            problems.add(new Problem("/setting/outdoors", "the work cannot be outdoors and in a bay at once",
                    "leave out outdoors, or the bay"));
        }
        q.facts().colour().ifPresent(c -> word("/facts/colour", c, COLOURS));
        q.facts().soiling().ifPresent(s -> word("/facts/soiling", s, SOILING));
        q.facts().protection().ifPresent(p -> word("/facts/protection", p, PROTECTION));
        for (int i = 0; i < q.workers().size(); i++) {
            word("/workers/" + i + "/level", q.workers().get(i).level(), LEVELS);
        }
        if (!problems.isEmpty()) {
            throw new BadQuestion(problems);
        }
        return q;
    }

    private void age(String age) {
        if (age.equals(Question.UNKNOWN)) {
            return;
        }
        try {
            double hours = Ages.hours(age);
            if (hours < 0) {
                problems.add(new Problem("/age", "\"" + age + "\" is negative", "say how long ago it landed, as P12D"));
            } else if (hours > 24 * 365 * 100.0) {
                problems.add(new Problem("/age", "\"" + age + "\" is over a hundred years", "say how long ago it landed"));
            }
        } catch (DateTimeException | ArithmeticException e) {
            problems.add(new Problem("/age", "\"" + age + "\" is not an ISO 8601 duration",
                    "write P12D for twelve days, PT6H for six hours, or unknown"));
        }
    }

    private void numbers(Question q) {
        q.extent().spots().ifPresent(s -> within("/extent/spots", s, 1, 100_000));
        q.extent().diameterMm().ifPresent(d -> within("/extent/diameterMm", d, 0.1, 5_000));
        q.extent().areaM2().ifPresent(a -> within("/extent/areaM2", a, 0.0001, 1_000));
        q.facts().totalFilmMicrons().ifPresent(t -> {
            within("/facts/totalFilmMicrons/min", t.min(), 0, 10_000);
            within("/facts/totalFilmMicrons/max", t.max(), t.min(), 10_000);
        });
        q.facts().clearMicrons().ifPresent(c -> within("/facts/clearMicrons", c, 0, 2_000));
        q.facts().paintAgeDays().ifPresent(d -> within("/facts/paintAgeDays", d, 0, 50_000));
        q.facts().vehicleYear().ifPresent(y -> within("/facts/vehicleYear", y, 1880, 2100));
        q.facts().warmestPanelC().ifPresent(c -> within("/facts/warmestPanelC", c, -50, 130));
        q.setting().airC().ifPresent(c -> within("/setting/airC", c, -50, 60));
        q.setting().panelC().ifPresent(c -> within("/setting/panelC", c, -50, 130));
        within("/setting/windMs", q.setting().windMs(), 0, 60);
        q.setting().humidity().ifPresent(h -> within("/setting/humidity", h, 0, 1));
        q.setting().indoors().ifPresent(i -> {
            within("/setting/indoors/volumeM3", i.volumeM3(), 1, 1_000_000);
            within("/setting/indoors/airChangesPerHour", i.airChangesPerHour(), 0, 1_000);
        });
        q.setting().water().ifPresent(w -> {
            w.hardnessMgL().ifPresent(h -> within("/setting/water/hardnessMgL", h, 0, 5_000));
            w.alkalinityMgL().ifPresent(a -> within("/setting/water/alkalinityMgL", a, 0, 5_000));
        });
        q.mixing().ifPresent(m -> {
            within("/mixing/bottleMl", m.bottleMl(), 10, 1_000_000);
            m.drawParts().ifPresent(d -> within("/mixing/drawParts", d, 0, 200));
        });
        within("/canWaitMinutes", q.canWaitMinutes(), 0, 1_000_000);
    }

    private void tried(Question q) {
        for (int i = 0; i < q.tried().size(); i++) {
            Question.Tried tried = q.tried().get(i);
            String at = "/tried/" + i;
            tried.method().ifPresent(m -> known(at + "/method", List.of(m), base.methods().keySet(), false));
            tried.substance().ifPresent(s -> known(at + "/substance", List.of(s), base.agents().keySet(), false));
            if (tried.method().isEmpty() && tried.substance().isEmpty() && tried.text().isEmpty()) {
                problems.add(new Problem(at, "it does not say what was tried", "name a method, a substance or a text"));
            }
            if (tried.outcome() == null) {
                problems.add(new Problem(at + "/outcome", "it is missing", "say " + String.join(", ", OUTCOMES)));
            } else {
                word(at + "/outcome", tried.outcome(), OUTCOMES);
            }
            within(at + "/times", tried.times(), 1, 100);
            within(at + "/dwellMinutes", tried.dwellMinutes(), 0, 100_000);
            within(at + "/hoursAgo", tried.hoursAgo(), 0, 1_000_000);
        }
    }

    private void within(String pointer, double value, double from, double to) {
        if (!(value >= from && value <= to)) {
            problems.add(new Problem(pointer, value + " is out of range",
                    "give a number from " + from + " to " + to));
        }
    }

    private void word(String pointer, String word, List<String> words) {
        if (!words.contains(word)) {
            problems.add(new Problem(pointer, "\"" + word + "\" is not one of the words here",
                    "use " + String.join(", ", words)));
        }
    }

    private void known(String pointer, List<String> ids, Collection<String> known, boolean inList) {
        for (int i = 0; i < ids.size(); i++) {
            if (!known.contains(ids.get(i))) {
                problems.add(new Problem(inList ? pointer + "/" + i : pointer,
                        "\"" + ids.get(i) + "\" is not known", Near.to(ids.get(i), known)));
            }
        }
    }
}
