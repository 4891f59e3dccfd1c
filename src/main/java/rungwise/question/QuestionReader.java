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
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.method.Gate;
import rungwise.text.Near;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.exc.UnrecognizedPropertyException;

/** Reads a question from a parsed tree and checks it against what is known. */
public final class QuestionReader {
    private static final ObjectMapper MAPPER = Mappers.json();

    private final KnowledgeBase base;
    private final List<Problem> problems;

    private QuestionReader(KnowledgeBase base, List<Problem> problems) {
        this.base = base;
        this.problems = problems;
    }

    /**
     * The question.
     *
     * @throws BadQuestion where a field is unknown, of the wrong kind, out of range, or names what is not known
     */
    public static Question read(JsonNode tree, KnowledgeBase base) {
        if (!tree.isObject()) {
            throw new BadQuestion(List.of(Problem.said("", "no-question", "kind",
                    tree.getNodeType().toString().toLowerCase(java.util.Locale.ROOT))));
        }
        List<Problem> empty = new ArrayList<>();
        nulls(tree, "", empty);
        if (!empty.isEmpty()) {
            throw new BadQuestion(empty);
        }
        List<Problem> problems = new ArrayList<>();
        JsonNode inWords = new ClosedLists(base).read(new Named(base).read(tree, problems), problems);
        return new QuestionReader(base, problems).checked(bound(inWords, problems));
    }

    private static Question bound(JsonNode tree, List<Problem> problems) {
        try {
            return MAPPER.treeToValue(tree, Question.class);
        } catch (UnrecognizedPropertyException e) {
            List<String> fields = e.getReferringClass().isRecord()
                    ? Arrays.stream(e.getReferringClass().getRecordComponents()).map(RecordComponent::getName).toList()
                    : List.of();
            problems.add(0, fields.isEmpty() ? Problem.said(WrongKind.pointer(e), "no-fields-here", "field", e.getPropertyName())
                    : Problem.said(WrongKind.pointer(e), "no-field", "field", e.getPropertyName(), "near",
                    Near.among(e.getPropertyName(), fields, Texts.said("near.fields"))));
        } catch (JacksonException e) {
            problems.add(0, WrongKind.in(tree, e));
        }
        throw new BadQuestion(problems);
    }

    /** A list of things holds things; what is unknown is left out. Empty text would be read as nothing where a number belongs. */
    private static void nulls(JsonNode tree, String at, List<Problem> empty) {
        if (tree.isString() && tree.stringValue().chars().allMatch(c -> c <= ' ')) {
            empty.add(Problem.said(at, "says-nothing"));
        }
        for (int i = 0; tree.isArray() && i < tree.size(); i++) {
            if (tree.get(i).isNull()) {
                empty.add(Problem.said(at + "/" + i, "null-in-a-list"));
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
        known("/notSeen", q.notSeen(), base.observations().keySet(), true);
        age(q.age());
        if (!q.surface().contains(Question.UNKNOWN)) {
            known("/surface", q.surface(), base.surfaces().keySet(), q.surface().size() > 1);
        }
        known("/neighbours", q.neighbours(), base.surfaces().keySet(), true);
        Set<String> things = new HashSet<>(base.methods().keySet());
        things.addAll(base.agents().keySet());
        things.addAll(base.tools().keySet());
        q.shelf().ifPresent(s -> known("/shelf", s, things, true));
        Set<String> gatesAndMethods = new HashSet<>(base.methods().keySet());
        gatesAndMethods.addAll(base.gates().keySet());
        agreed(q.consent().granted(), gatesAndMethods);
        known("/consent/refused", q.consent().refused(), gatesAndMethods, true);
        known("/passedTests", q.passedTests(), base.methods().keySet(), true);
        known("/wanted", q.wanted(), base.methods().keySet(), true);
        numbers(q);
        tried(q);
        if (q.setting().outdoors() && q.setting().indoors().isPresent()) {
            problems.add(Problem.said("/setting/outdoors", "outdoors-and-indoors"));
        }
        if (q.workers().stream().anyMatch(w -> !w.sensitisedTo().isEmpty())) {
            sensitised(q.workers(), new Sensitisation(base));
        }
        if (!problems.isEmpty()) {
            throw new BadQuestion(problems);
        }
        return q;
    }

    private void sensitised(List<Question.Worker> workers, Sensitisation sensitisation) {
        for (int i = 0; i < workers.size(); i++) {
            List<String> words = workers.get(i).sensitisedTo();
            for (int j = 0; j < words.size(); j++) {
                sensitisation.problem("/workers/" + i + "/sensitisedTo/" + j, words.get(j)).ifPresent(problems::add);
            }
        }
    }

    private void age(String age) {
        if (age.equals(Question.UNKNOWN)) {
            return;
        }
        try {
            double hours = Ages.hours(age);
            if (hours < 0) {
                problems.add(Problem.said("/age", "age-negative", "age", age));
            } else if (hours > 24 * 365 * 100.0) {
                problems.add(Problem.said("/age", "age-over-a-century", "age", age));
            }
        } catch (DateTimeException | ArithmeticException e) {
            if (!told("/age")) {
                problems.add(Problem.said("/age", "no-duration", "said", age));
            }
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
                problems.add(Problem.said(at, "tried-nothing"));
            }
            tried.text().ifPresent(text -> text(at + "/text", text));
            if (tried.outcome() == null) {
                problems.add(Problem.said(at + "/outcome", "outcome-missing", "words",
                        String.join(", ", base.questionWords().outcomes().keySet())));
            }
            within(at + "/times", tried.times(), 1, 100);
            within(at + "/dwellMinutes", tried.dwellMinutes(), 0, 100_000);
            within(at + "/hoursAgo", tried.hoursAgo(), 0, 1_000_000);
        }
    }

    private void within(String pointer, double value, double from, double to) {
        if (!(value >= from && value <= to)) {
            problems.add(Problem.said(pointer, "out-of-range", "value", Figures.exact(value), "from", Figures.exact(from), "to",
                    Figures.exact(to)));
        }
    }

    private void text(String pointer, String text) {
        if (!PlainText.isPlain(text)) {
            problems.add(Problem.said(pointer, "unseen-character"));
        }
    }

    /** Nobody can agree to work or to the answer to a question. */
    private void agreed(List<String> granted, Set<String> gatesAndMethods) {
        known("/consent/granted", granted, gatesAndMethods, true);
        List<String> agreeable = ClosedLists.agreeable(base);
        for (int i = 0; i < granted.size(); i++) {
            Gate gate = base.gates().get(granted.get(i));
            if (gate != null && !agreeable.contains(granted.get(i))) {
                problems.add(gate.asks()
                        ? Problem.said("/consent/granted/" + i, "question-not-agreed", "gate", gate.id(), "obtain", gate.obtain())
                        : Problem.said("/consent/granted/" + i, "work-not-agreed", "gate", gate.id()));
            }
        }
    }

    /** Whether the words of a field were refused already. */
    private boolean told(String pointer) {
        return problems.stream().anyMatch(p -> p.pointer().equals(pointer) || p.pointer().startsWith(pointer + "/"));
    }

    private void known(String pointer, List<String> ids, Collection<String> known, boolean inList) {
        for (int i = 0; i < ids.size(); i++) {
            if (!known.contains(ids.get(i)) && !told(inList ? pointer + "/" + i : pointer)) {
                problems.add(Problem.said(inList ? pointer + "/" + i : pointer, "unknown", "word", ids.get(i), "near",
                        Near.to(ids.get(i), known)));
            }
        }
    }
}
