package rungwise.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.diagnosis.Identification;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotReader;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.method.Method;
import rungwise.question.BadQuestion;
import rungwise.question.QuestionReader;
import tools.jackson.databind.JsonNode;

/**
 * Every entry of the knowledge is used by at least one case: named in its question or in what is expected, or part of
 * what is offered there. That a method is barred or passed over unasked is no use of it.
 */
class EveryEntryHasACaseTest {
    private static final Path CASES = Path.of("src/test/resources/cases");
    private static final Path IDENTIFY = Path.of("src/test/resources/identify");

    private static final Path SCIENCE = Path.of("src/test/resources/science");
    private static final Path PRODUCTS = Path.of("src/test/resources/products");

    private static final Set<String> SAFETY = Set.of("exposure", "gloves", "respirators");

    /** What no answer can show, each with its reason. */
    private static final Map<String, String> REFERENCE = Map.of(
            "g22", "no question says what was quoted",
            "g23", "the circumstance contents_found holds all work, so no rung is left to carry it",
            "g25", "an unknown surface leaves a wash at most, an unknown deposit is held",
            "w_bio", "a rung carries the waste of its method; that a deposit asks for two bags a rule says in words",
            "w_lead", "as for w_bio: a rule says it of old paint, no method is for old paint alone",
            "neutral_or_alkaline_shampoo", "a wash asks for no chart; the row is there for who looks it up");

    private final Advisor advisor = Base.advisor();
    private final Identifier identifier = new Identifier(advisor);
    private final KnowledgeBase known = advisor.knowledge();
    private final Set<String> used = new TreeSet<>();
    /** Of charts, masks and what is breathed: some bear the id of a substance, which is no use of them. */
    private final Set<String> ofSafety = new TreeSet<>();
    private final StringBuilder reasons = new StringBuilder();

    @Test
    void no_entry_is_without_a_case() throws IOException {
        Base.entries(CASES).forEach(this::ladder);
        Base.entries(IDENTIFY).forEach(this::identification);
        Base.entries(SCIENCE).forEach(this::named);
        Base.entries(SCIENCE).forEach(one -> ofSafety.add(one.path("exposure").asString("")));
        Base.entries(PRODUCTS).forEach(this::product);
        follow();
        Map<String, Set<String>> never = new TreeMap<>();
        kinds().forEach((kind, ids) -> {
            Set<String> left = new TreeSet<>(ids);
            left.removeAll(SAFETY.contains(kind) ? ofSafety : used);
            left.removeAll(REFERENCE.keySet());
            if (!left.isEmpty()) {
                never.put(kind, left);
            }
        });
        int all = kinds().values().stream().mapToInt(Set::size).sum();
        System.out.println("entries with a case: " + (all - REFERENCE.size() - never.values().stream().mapToInt(Set::size).sum())
                + " of " + all + ", shown nowhere by its reason: " + REFERENCE.size());
        assertThat(never).isEmpty();
        Set<String> needless = new TreeSet<>(REFERENCE.keySet());
        needless.removeIf(id -> !used.contains(id) && !ofSafety.contains(id));
        assertThat(needless).as("listed as shown nowhere, and shown").isEmpty();
    }

    private Map<String, Set<String>> kinds() {
        Map<String, Set<String>> kinds = new TreeMap<>();
        kinds.put("contaminants", known.contaminants().keySet());
        kinds.put("surfaces", known.surfaces().keySet());
        kinds.put("methods", known.methods().keySet());
        kinds.put("agents", known.agents().keySet());
        kinds.put("tools", known.tools().keySet());
        kinds.put("families", known.families().keySet());
        kinds.put("gates", known.gates().keySet());
        kinds.put("circumstances", known.circumstances().keySet());
        kinds.put("signs", known.observations().keySet());
        kinds.put("groups of signs", known.signs().groups().keySet());
        kinds.put("strengths of signs", known.signs().strengths().keySet());
        kinds.put("checks", known.signs().checks().keySet());
        kinds.put("frequencies", known.signs().frequencies().keySet());
        kinds.put("bond classes", known.bondClasses().keySet());
        kinds.put("substances", known.substances().keySet());
        kinds.put("spheres", known.solutes().keySet());
        kinds.put("exposure", known.exposures().keySet());
        kinds.put("gloves", known.gloves().keySet());
        kinds.put("respirators", known.respirators().keySet());
        kinds.put("protection", known.ppe().keySet());
        kinds.put("waste", known.wastes().keySet());
        kinds.put("levels", known.levels().keySet());
        return kinds;
    }

    private void ladder(JsonNode one) {
        named(one.path("question"));
        named(one.path("expect"));
        try {
            Answer answer = advisor.answer(QuestionReader.read(one.path("question"), known));
            offered(answer);
            reasons.append(Mappers.json().writeValueAsString(answer));
        } catch (BadQuestion refused) {
            // a case of refusal names what it names, and no more
        }
    }

    private void identification(JsonNode one) {
        named(one.path("spot"));
        named(one.path("expect"));
        // where it sits and what is around it are signs like any other
        used.add("place_" + one.path("spot").path("place").asString(""));
        used.add("side_" + one.path("spot").path("side").asString(""));
        one.path("spot").path("surroundings").forEach(s -> used.add("near_" + s.asString()));
        Identification found = identifier.identify(SpotReader.read(one.path("spot"), known));
        found.check().offered().ifPresent(c -> used.add(c.id()));
    }

    private void product(JsonNode one) {
        JsonNode expect = one.path("expect");
        named(one.path("product"));
        named(expect);
        List.of("charts", "air", "respirator", "held").forEach(field -> {
            expect.path(field).propertyNames().forEach(ofSafety::add);
            expect.path(field).values().forEach(word -> ofSafety.add(word.asString("")));
            ofSafety.add(expect.path(field).asString(""));
        });
    }

    /** Every word of a question or an expectation, values and names of fields. */
    private void named(JsonNode node) {
        if (node.isString()) {
            used.add(node.stringValue());
        }
        node.propertyNames().forEach(used::add);
        node.values().forEach(this::named);
    }

    private void offered(Answer answer) {
        Stream.concat(answer.rungs().stream(), answer.alternatives().stream().map(Answer.Alternative::rung)).forEach(rung -> {
            used.add(rung.method());
            rung.ppe().forEach(p -> used.add(p.item()));
            rung.gates().forEach(g -> used.add(g.id()));
            rung.bridgeBefore().forEach(b -> used.addAll(b.steps()));
            steps(rung.ifCleared());
            steps(rung.ifMarked());
        });
        steps(answer.before());
        steps(answer.after());
        answer.whoTakesOver().ifPresent(w -> used.add(w.method()));
        answer.next().method().ifPresent(used::add);
    }

    private void steps(List<Answer.Around> steps) {
        steps.forEach(s -> used.add(s.step()));
    }

    /** What a used entry is made of is used with it. */
    private void follow() {
        known.methods().values().stream().filter(m -> used.contains(m.id())).toList().forEach(this::parts);
        known.agents().values().stream().filter(a -> used.contains(a.id())).forEach(a -> {
            used.add(a.family());
            used.addAll(a.composition().keySet());
            ofSafety.addAll(a.dissolved().keySet());
        });
        known.substances().values().stream().filter(s -> used.contains(s.id()))
                .map(s -> s.evaporatesAs().keySet()).toList().forEach(used::addAll);
        known.contaminants().values().stream().filter(c -> used.contains(c.id())).forEach(this::parts);
        known.bondClasses().values().stream().filter(b -> used.contains(b.id()))
                .forEach(b -> b.dissolvesLike().ifPresent(used::add));
        known.surfaces().values().stream().filter(s -> used.contains(s.id()))
                .forEach(s -> s.polymers().forEach(p -> used.add(p.sphere())));
        known.observations().values().stream().filter(o -> used.contains(o.id())).toList().forEach(this::parts);
        String told = reasons.toString().toLowerCase(java.util.Locale.ROOT);
        told(told, known.exposures().values().stream().map(e -> Map.entry(e.id(), e.name())).toList());
        told(told, known.gloves().values().stream().map(g -> Map.entry(g.id(), g.name())).toList());
        told(told, known.respirators().values().stream().map(r -> Map.entry(r.id(), r.name())).toList());
        known.respirators().values().stream().filter(r -> ofSafety.contains(r.id())).forEach(r -> used.add(r.ppe()));
        // a set of protection lists its items in its meaning
        known.ppe().values().stream().filter(w -> used.contains(w.id())).map(w -> w.items())
                .toList().forEach(used::addAll);
    }

    private void parts(Method method) {
        used.addAll(List.of(method.agent(), method.tool(), method.family(), method.waste(), method.level()));
        used.addAll(method.ppe());
    }

    private void parts(Contaminant one) {
        used.addAll(List.of(one.bond().fresh(), one.bond().hardened(), known.signs().frequencyOf(one.id()).id()));
        one.dissolvesLike().ifPresent(used::add);
    }

    private void parts(Observation one) {
        used.addAll(List.of(one.group(), one.seenBy(), one.strength()));
    }

    /** Said by name among the reasons of an answer. */
    private void told(String reasons, Collection<Map.Entry<String, String>> names) {
        names.stream().filter(n -> reasons.contains(n.getValue().toLowerCase(java.util.Locale.ROOT))).forEach(n -> ofSafety.add(n.getKey()));
    }
}
