package rungwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

/** Every case of recognition written as data. */
class IdentifyCasesTest {
    private static final Path FOLDER = Path.of("src/test/resources/identify");
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Identifier IDENTIFIER = new Identifier(Base.advisor());

    private static List<JsonNode> cases() throws IOException {
        return Base.entries(FOLDER);
    }

    @TestFactory
    Stream<DynamicTest> every_case_is_recognised_as_its_source_says() throws IOException {
        return cases().stream().map(one -> DynamicTest.dynamicTest(one.path("name").asString(),
                () -> assertThat(differences(one)).isEmpty()));
    }

    @Test
    void every_file_fits_the_schema_and_every_source_is_known() throws IOException {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.newInputStream(FOLDER.resolve("identify.schema.json")));
        for (Path file : Files.list(FOLDER).filter(f -> f.toString().endsWith(".yaml")).toList()) {
            assertThat(schema.validate(Mappers.yaml().readTree(Files.readString(file)))).as(file.toString()).isEmpty();
        }
        Set<String> unknown = new TreeSet<>();
        for (JsonNode one : cases()) {
            for (String source : one.path("source").asString().split(", ")) {
                if (!source.equals("common-practice") && !KNOWN.sources().containsKey(source)) {
                    unknown.add(source);
                }
            }
        }
        assertThat(unknown).isEmpty();
        assertThat(cases()).hasSizeGreaterThanOrEqualTo(70);
    }

    private static List<String> differences(JsonNode one) {
        Spot spot = SpotReader.read(one.path("spot"), KNOWN);
        Identification found = IDENTIFIER.identify(spot);
        Map<String, Double> belief = IDENTIFIER.belief(spot);
        JsonNode expect = one.path("expect");
        List<String> out = new ArrayList<>();
        List<String> listed = found.suspects().stream().map(Identification.Suspect::contaminant).toList();
        String seen = " but it is " + found.suspects().stream().limit(4).map(s -> s.contaminant() + " "
                + s.probability()).toList();
        if (expect.has("top")) {
            need(listed.get(0).equals(expect.path("top").asString()), "top " + expect.path("top") + seen, out);
        }
        words(expect.path("top3")).forEach(w -> need(listed.subList(0, 3).contains(w), w + " in three" + seen, out));
        List<String> above = words(expect.path("above"));
        for (int i = 1; i < above.size(); i++) {
            need(belief.containsKey(above.get(i)) && belief.get(above.get(0)) > belief.get(above.get(i)),
                    above.get(0) + " above " + above.get(i) + " " + belief.get(above.get(i)) + seen, out);
        }
        expect.path("atLeast").properties().forEach(e -> need(belief.get(e.getKey()) >= e.getValue().asDouble(),
                e.getKey() + " at least " + e.getValue() + seen, out));
        expect.path("atMost").properties().forEach(e -> need(belief.get(e.getKey()) <= e.getValue().asDouble(),
                e.getKey() + " at most " + e.getValue() + seen, out));
        if (expect.has("verdict")) {
            need(words(expect.path("verdict")).contains(found.verdict()), "verdict " + expect.path("verdict")
                    + " not " + found.verdict() + seen, out);
        }
        if (expect.has("next")) {
            need(words(expect.path("next")).contains(found.next().action()), "next " + expect.path("next") + " not "
                    + found.next().action() + ": " + found.next().text() + seen, out);
        }
        if (expect.has("contradiction")) {
            need(expect.path("contradiction").asBoolean() != found.contradictions().isEmpty(), "contradiction", out);
        }
        words(expect.path("notOffered")).forEach(c -> need(found.check().notOffered().stream().anyMatch(w ->
                w.check().equals(c) && !w.why().isBlank()), "withheld " + c + " not " + found.check().notOffered(), out));
        words(expect.path("mustNotCheck")).forEach(c -> need(found.check().offered().filter(o -> o.id().equals(c))
                .isEmpty(), "never " + c, out));
        words(expect.path("decisive")).forEach(s -> need(found.suspects().get(0).speaksFor().stream().anyMatch(g ->
                g.sign().equals(s) && g.decisive()), "decisive " + s, out));
        return out;
    }

    private static void need(boolean met, String expected, List<String> out) {
        if (!met) {
            out.add("expected " + expected);
        }
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(w -> words.add(w.asString()));
        return words;
    }
}
