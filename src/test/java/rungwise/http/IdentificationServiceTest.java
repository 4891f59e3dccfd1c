package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.lang.reflect.RecordComponent;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.compare.Comparison;
import rungwise.diagnosis.Identification;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Identifications, comparisons and ladders over a belief, over a real socket and against their description. */
class IdentificationServiceTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static Service service;

    @BeforeAll
    static void start() {
        service = Service.start(Base.advisor(), "127.0.0.1", 0);
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    private static JsonNode answered(String path, String body, String schema) throws Exception {
        HttpResponse<String> response = Wire.post(service, path, body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(200);
        JsonNode answer = JSON.readTree(response.body());
        JsonNode openapi = JSON.readTree(Files.readString(Path.of("src/main/resources/openapi.json")));
        JsonNode schemas = openapi.at("/components/schemas");
        var root = JSON.createObjectNode().put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("$ref", "#/components/schemas/" + schema);
        root.putObject("components").set("schemas", schemas);
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("urn:rungwise:openapi"), root).validate(answer)).isEmpty();
        return answer;
    }

    private static JsonNode errors(String path, String body) throws Exception {
        HttpResponse<String> response = Wire.post(service, path, body);
        assertThat(response.statusCode()).as(response.body()).isEqualTo(422);
        assertThat(response.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        return JSON.readTree(response.body()).path("errors");
    }

    @Test
    void orange_dots_by_the_railway_are_identified_as_described() throws Exception {
        JsonNode found = answered("/v1/identifications", "{\"observations\":[\"v21\"],\"place\":\"horizontals\","
                + "\"surroundings\":[\"railway\"],\"surface\":\"clear_2k_sound\"}", "Identification");
        assertThat(found.at("/suspects/0/contaminant").asString()).isEqualTo("fallout_iron");
        assertThat(found.path("suspects").size()).isGreaterThanOrEqualTo(3);
    }

    @Test
    void what_is_described_is_what_the_records_hold() throws Exception {
        JsonNode schemas = JSON.readTree(Files.readString(Path.of("src/main/resources/openapi.json")))
                .at("/components/schemas");
        same(schemas.path("Identification"), Identification.class);
        same(schemas.path("Suspect"), Identification.Suspect.class);
        same(schemas.path("Sign"), Identification.Sign.class);
        same(schemas.at("/Identification/properties/check"), Identification.NextCheck.class);
        same(schemas.at("/Identification/properties/check/properties/offered"), Identification.Check.class);
        same(schemas.at("/Identification/properties/check/properties/offered/properties/outcomes/items"),
                Identification.Outcome.class);
        same(schemas.path("Comparison"), Comparison.class);
        same(schemas.at("/Comparison/properties/methods/items"), Comparison.Moved.class);
    }

    private static void same(JsonNode schema, Class<?> record) {
        Set<String> names = Arrays.stream(record.getRecordComponents()).map(RecordComponent::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(new TreeSet<>(schema.path("properties").propertyNames())).as(record.getSimpleName()).isEqualTo(names);
    }

    @Test
    void an_unknown_sign_place_or_neighbourhood_is_pointed_at_with_near_ones() throws Exception {
        JsonNode errors = errors("/v1/identifications", "{\"observations\":[\"v211\"],\"notSeen\":[\"colour_gray\"],"
                + "\"place\":\"sill\",\"surroundings\":[\"conifer\"]}");
        assertThat(errors.toString()).contains("/observations/0", "/notSeen/0", "colour_grey", "/place", "sills",
                "/surroundings/0", "conifers");
    }

    @Test
    void a_named_contaminant_and_a_strange_field_are_refused() throws Exception {
        assertThat(errors("/v1/identifications", "{\"contaminant\":\"tar_spot\"}").toString()).contains("/contaminant");
        assertThat(errors("/v1/identifications", "{\"sign\":[]}").toString()).contains("/sign");
        assertThat(errors("/v1/identifications", "[]").size()).isPositive();
        assertThat(errors("/v1/identifications", "{\"notSeen\":\"v21\"}").toString()).contains("/notSeen");
    }

    @Test
    void a_sign_that_is_not_there_counts_in_a_ladder_too() throws Exception {
        String signs = "{\"observations\":[\"colour_orange\",\"form_fine_dots\"],\"surface\":\"clear_2k_sound\",\"setting\":{\"panelC\":20}";
        JsonNode before = answered("/v1/ladders", signs + "}", "Answer");
        JsonNode after = answered("/v1/ladders", signs + ",\"notSeen\":[\"v02\"]}", "Answer");
        assertThat(before.at("/suspects/0/contaminant").asString()).isEqualTo("fallout_iron");
        assertThat(probability(after, "fallout_iron")).isLessThan(probability(before, "fallout_iron") / 1.5);
        assertThat(after.at("/question/notSeen/0").asString()).isEqualTo("v02");
        assertThat(errors("/v1/ladders", signs + ",\"notSeen\":[\"v022\"]}").toString()).contains("/notSeen/0", "v02");
    }

    private static double probability(JsonNode answer, String deposit) {
        for (JsonNode one : answer.path("suspects")) {
            if (one.path("contaminant").asString().equals(deposit)) {
                return one.path("probability").asDouble();
            }
        }
        return 0;
    }

    @Test
    void a_check_for_the_name_may_be_asked_for_and_nothing_else() throws Exception {
        answered("/v1/identifications", "{\"observations\":[\"colour_brown\",\"form_raised_dots\"],\"surface\":\"clear_2k_sound\","
                + "\"checkFor\":\"name\"}", "Identification");
        assertThat(errors("/v1/identifications", "{\"observations\":[\"v21\"],\"checkFor\":\"fun\"}").toString()).contains("/checkFor", "minutes", "name");
    }

    @Test
    void a_ladder_for_signs_alone_says_what_it_may_be() throws Exception {
        JsonNode answer = answered("/v1/ladders", "{\"observations\":[\"v21\"],\"surface\":\"clear_2k_sound\","
                + "\"facts\":{\"place\":\"horizontals\"},\"setting\":{\"panelC\":20},\"whatIf\":true}", "Answer");
        assertThat(answer.at("/suspects/0/contaminant").asString()).isEqualTo("fallout_iron");
        assertThat(answer.path("rungs").size()).isPositive();
        assertThat(answer.path("whatIf").isArray()).isTrue();
    }

    @Test
    void a_ladder_for_nothing_at_all_is_held_as_before() throws Exception {
        JsonNode answer = answered("/v1/ladders", "{\"surface\":\"clear_2k_sound\"}", "Answer");
        assertThat(answer.at("/next/action").asString()).isEqualTo("hold");
        assertThat(answer.has("suspects")).isFalse();
    }

    @Test
    void what_if_must_be_true_or_false() throws Exception {
        assertThat(errors("/v1/ladders", "{\"contaminant\":\"tar_spot\",\"whatIf\":\"yes\"}").toString())
                .contains("/whatIf");
    }

    @Test
    void the_same_tar_on_lacquer_differs_by_bars_that_say_why() throws Exception {
        JsonNode compared = answered("/v1/ladders/compare", "{\"one\":{\"contaminant\":\"tar_spot\",\"surface\":"
                + "\"clear_2k_sound\"},\"other\":{\"contaminant\":\"tar_spot\",\"surface\":\"lacquer_nitro_acrylic\"}}",
                "Comparison");
        assertThat(compared.at("/asked/0/field").asString()).isEqualTo("/surface");
        assertThat(compared.path("methods").toString()).contains("\"other\":\"never\"", "\"standsIn\":\"other\"");
    }

    @Test
    void a_question_compared_with_itself_differs_in_nothing() throws Exception {
        String tar = "{\"contaminant\":\"tar_spot\",\"surface\":\"clear_2k_sound\"}";
        JsonNode compared = answered("/v1/ladders/compare", "{\"one\":" + tar + ",\"other\":" + tar + "}", "Comparison");
        assertThat(compared.path("asked").size() + compared.path("methods").size() + compared.path("others").size())
                .isZero();
        assertThat(compared.has("next")).isFalse();
    }

    @Test
    void a_wrong_side_of_a_comparison_is_pointed_at() throws Exception {
        assertThat(errors("/v1/ladders/compare", "{\"one\":{},\"other\":{\"contaminant\":\"tar_spt\"}}").toString())
                .contains("/other/contaminant", "tar_spot");
        assertThat(errors("/v1/ladders/compare", "{\"one\":{}}").toString()).contains("/other");
    }
}
