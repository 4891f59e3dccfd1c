package rungwise.cases;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.common.Range;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.overlay.Doubt;
import rungwise.knowledge.overlay.Overlay;
import rungwise.knowledge.safety.AirLimit;
import rungwise.knowledge.safety.Exposure;
import rungwise.knowledge.safety.Permeation;
import rungwise.question.QuestionReader;
import rungwise.start.Opened;
import rungwise.text.Figure;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Every product written as data: what its sheet makes of it, with no entry of the knowledge made for it. */
class ProductCasesTest {
    private static final Path FOLDER = Path.of("src/test/resources/products");
    /** A closed bay, half an hour of spots, and nothing but the product on the shelf. */
    private static final String ASKED = "{age: P10D, extent: {spots: 30}, setting: {airC: 20, panelC: 20, sun: shade, "
            + "indoors: {volumeM3: 60, airChangesPerHour: 1}}, shelfStrict: true}";

    @TempDir
    static Path shelf;

    private static List<JsonNode> all;
    private static Advisor advisor;
    private static KnowledgeBase known;
    private static Map<String, Overlay.Taken> taken;

    /** All of them on one shelf, so that knowledge and rules are opened once. */
    @BeforeAll
    static void open() throws IOException {
        all = cases();
        ObjectNode file = Mappers.yaml().createObjectNode();
        ArrayNode products = file.putArray("products");
        all.stream().filter(c -> !c.path("expect").has("refused")).forEach(c -> products.add(c.path("product")));
        Files.writeString(shelf.resolve("own.yaml"), Mappers.yaml().writeValueAsString(file));
        Opened opened = Opened.from(Optional.empty(), Optional.empty(), Optional.of(shelf));
        advisor = opened.orElseThrow();
        taken = opened.products().stream().collect(Collectors.toMap(Overlay.Taken::product, t -> t));
        known = advisor.knowledge();
    }

    private static List<JsonNode> cases() throws IOException {
        return Base.entries(FOLDER);
    }

    @TestFactory
    Stream<DynamicTest> every_product_is_taken_for_what_its_source_says() {
        return all.stream().map(one -> DynamicTest.dynamicTest(one.path("name").asString(),
                () -> assertThat(differences(one)).isEmpty()));
    }

    @Test
    void every_file_fits_the_schema_and_every_source_is_known() throws IOException {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.newInputStream(FOLDER.resolve("products.schema.json")));
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                assertThat(schema.validate(Mappers.yaml().readTree(Files.readString(file)))).as(file.toString()).isEmpty();
            }
        }
        Set<String> unknown = new TreeSet<>();
        all.forEach(one -> unknown.addAll(List.of(one.path("source").asString().split(", "))));
        unknown.remove("common-practice");
        unknown.removeAll(known.sources().keySet());
        assertThat(unknown).isEmpty();
    }

    /** A word that no case uses would be a guess that nobody looked at. */
    @Test
    void every_function_and_everything_that_outweighs_a_label_has_a_case() {
        Set<String> used = new TreeSet<>();
        all.forEach(one -> known.productWords().function(one.at("/product/function").asString("")).ifPresent(f -> used.add(f.id())));
        assertThat(used).containsExactlyInAnyOrderElementsOf(known.productWords().functions().keySet());
        String asked = taken.values().toString();
        assertThat(known.productWords().telling().values()).allSatisfy(told -> {
            assertThat(asked).contains("it is " + told.says() + ",");
            assertThat(known.methods().get(told.method()).family()).isEqualTo("barred_chemistry");
        });
    }

    private static List<String> differences(JsonNode one) {
        JsonNode expect = one.path("expect");
        List<String> out = new ArrayList<>();
        if (expect.has("refused")) {
            refused(one, out);
            return out;
        }
        String id = one.path("product").path("id").asString();
        Agent agent = known.agents().get(id);
        numbers("solvents", expect, percents(agent), out);
        numbers("held", expect, agent.dissolved(), out);
        same("family", expect, known.methods().get(id).family(), out);
        label(id, expect, agent, out);
        Set<String> reactive = new TreeSet<>();
        agent.reactive().forEach(r -> reactive.add(r.name().toLowerCase(Locale.ROOT)));
        words(expect.path("reactive")).forEach(w -> need(reactive.contains(w), w + " among " + reactive, out));
        words(expect.path("ppe")).forEach(w -> need(agent.ppe().contains(w), w + " among " + agent.ppe(), out));
        if (expect.has("charts")) {
            Set<String> charts = new TreeSet<>(known.gloves().values().stream().filter(g -> g.counts(agent, known.decisions().value(DecisionId.SOLVENT_COUNTS)))
                    .map(Permeation::id).toList());
            need(charts.equals(new TreeSet<>(words(expect.path("charts")))), "charts " + expect.path("charts") + " not " + charts, out);
        }
        expect.path("limitPpm").properties().forEach(e -> need(limit(e.getKey()).orElse(-1) == e.getValue().asDouble(),
                "limit of " + e.getKey() + " " + e.getValue() + " not " + limit(e.getKey()), out));
        words(expect.path("barredOn")).forEach(s -> need(!advisor.barsOn(s, id).isEmpty(), "barred on " + s, out));
        words(expect.path("notBarredOn")).forEach(s -> need(advisor.barsOn(s, id).isEmpty(), "not barred on " + s
                + " " + advisor.barsOn(s, id), out));
        if (one.has("ask")) {
            answered(one, id, out);
        }
        return out;
    }

    /** What it was taken for, how strong it is in use, and what is asked. */
    private static void label(String id, JsonNode expect, Agent agent, List<String> out) {
        Method method = known.methods().get(id);
        same("taken", expect, taken.get(id).nearest(), out);
        same("acidityFrom", expect, taken.get(id).from().name().toLowerCase(Locale.ROOT), out);
        words(expect.path("works")).forEach(w -> need(method.works().contains(w), w + " among " + method.works(), out));
        if (expect.has("acidity")) {
            Range wanted = new Range(expect.at("/acidity/from").asDouble(), expect.at("/acidity/to").asDouble());
            need(agent.acidity().filter(wanted::equals).isPresent(), "pH " + wanted + " not " + agent.acidity(), out);
        }
        need(!expect.has("chemicalGrade") || method.severity().chemical() == expect.path("chemicalGrade").asInt(), "grade "
                + expect.path("chemicalGrade") + " not " + method.severity().chemical(), out);
        if (expect.has("asks")) {
            Set<String> asked = new TreeSet<>(taken.get(id).asks().stream().map(Doubt::id).toList());
            need(asked.equals(new TreeSet<>(words(expect.path("asks")))), "asked " + expect.path("asks") + " not " + taken.get(id).asks(), out);
        }
    }

    private static void refused(JsonNode one, List<String> out) {
        ObjectNode file = Mappers.yaml().createObjectNode();
        file.putArray("products").add(one.path("product"));
        String faults = Overlay.lay(known, "shelf", Map.of("own.yaml", Mappers.yaml().writeValueAsString(file))).faults()
                .toString();
        words(one.path("expect").path("refused")).forEach(w -> need(faults.contains(w), w + " in " + faults, out));
    }

    private static void answered(JsonNode one, String id, List<String> out) {
        JsonNode expect = one.path("expect");
        ObjectNode question = (ObjectNode) Mappers.yaml().readTree(ASKED);
        question.putArray("shelf").add(id).add("cloth");
        one.path("ask").properties().forEach(e -> question.set(e.getKey(), e.getValue()));
        Answer answer = advisor.answer(QuestionReader.read(question, known), true);
        Optional<Answer.Rung> found = Stream.concat(answer.rungs().stream(), answer.alternatives().stream()
                .map(Answer.Alternative::rung)).filter(r -> r.method().equals(id)).findFirst();
        if (found.isEmpty()) {
            out.add("expected it to be offered, but passed over " + answer.passedOver() + " and barred " + answer.barred()
                    .stream().filter(b -> b.method().equals(id)).toList());
            return;
        }
        Answer.Rung rung = found.get();
        String told = Mappers.json().writeValueAsString(rung).toLowerCase(Locale.ROOT);
        if (expect.has("glove")) {
            need(words(expect.path("glove")).stream().anyMatch(g -> told.contains("gloves: " + g)), "glove " + expect.path("glove")
                    + " in " + told, out);
        }
        if (expect.has("thinMinutes")) {
            List<Object> thin = rung.risks().stream().flatMap(r -> r.because().stream()).flatMap(b -> b.figures().stream())
                    .filter(f -> f.name().equals("thinMinutes")).map(Figure::value).toList();
            need(thin.contains(expect.path("thinMinutes").asDouble()), "thin gloves " + expect.path("thinMinutes") + " among " + thin, out);
        }
        words(expect.path("air")).forEach(e -> need(told.contains(known.exposures().get(e).name().toLowerCase(Locale.ROOT)),
                e + " in the air in " + told, out));
        if (expect.has("respirator")) {
            need(told.contains(known.respirators().get(expect.path("respirator").asString()).name().toLowerCase(Locale.ROOT)),
                    "respirator " + expect.path("respirator") + " in " + told, out);
        }
        if (expect.has("maskOn")) {
            need(rung.ppe().stream().anyMatch(p -> p.item().equals(expect.path("maskOn").asString())), expect.path("maskOn")
                    + " among " + rung.ppe().stream().map(Answer.Ppe::item).toList(), out);
        }
        words(expect.path("gates")).forEach(g -> need(rung.gates().stream().anyMatch(s -> s.id().equals(g)), "gate " + g
                + " among " + rung.gates().stream().map(Answer.GateState::id).toList(), out));
    }

    private static Map<String, Double> percents(Agent agent) {
        Map<String, Double> percents = new TreeMap<>();
        agent.solvents().forEach((kind, percent) -> percents.put(kind.name().toLowerCase(Locale.ROOT), percent));
        return percents;
    }

    private static OptionalDouble limit(String id) {
        Substance substance = known.substances().get(id);
        if (substance != null) {
            return substance.exposureLimitPpm().map(OptionalDouble::of).orElse(OptionalDouble.empty());
        }
        Exposure what = known.exposures().get(id);
        OptionalDouble shift = what.lowestPpm(AirLimit.Over.SHIFT);
        return shift.isPresent() ? shift : what.lowestPpm(AirLimit.Over.CEILING);
    }

    private static void numbers(String field, JsonNode expect, Map<String, Double> is, List<String> out) {
        if (expect.has(field)) {
            Map<String, Double> wanted = new TreeMap<>();
            expect.path(field).properties().forEach(e -> wanted.put(e.getKey(), e.getValue().asDouble()));
            need(wanted.keySet().equals(is.keySet()) && wanted.entrySet().stream().allMatch(e ->
                    Math.abs(e.getValue() - is.get(e.getKey())) < 0.05), field + " " + wanted + " not " + is, out);
        }
    }

    private static void same(String field, JsonNode expect, String is, List<String> out) {
        need(!expect.has(field) || expect.path(field).asString().equals(is), field + " " + expect.path(field) + " not " + is, out);
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(w -> words.add(w.asString()));
        return words;
    }

    private static void need(boolean met, String expected, List<String> out) {
        if (!met) {
            out.add("expected " + expected);
        }
    }
}
