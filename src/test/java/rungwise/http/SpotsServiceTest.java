package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwise.Base;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Store;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Spots over a real socket. */
class SpotsServiceTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String TAR = "{\"contaminant\":\"tar\",\"age\":\"12 days\",\"surface\":\"clear_2k_sound\"}";
    private static final String NO_CHANGE = "{\"method\":\"aliph_tar\",\"outcome\":\"no-change\",\"minutes\":6,\"dwellMinutes\":3}";

    @TempDir
    private Path folder;
    private Learning learning;
    private Service service;

    @BeforeEach
    void start() {
        start(folder.toString());
    }

    private void start(String data) {
        learning = new Learning(Shoplog.open(data), Base.advisor().knowledge(), true);
        service = Service.start(Base.advisor(), Optional.of(learning), "127.0.0.1", 0);
    }

    @AfterEach
    void stop() {
        service.close();
        learning.close();
    }

    private HttpResponse<String> post(String path, String body, String... headers) throws Exception {
        return Wire.post(service, path, body, headers);
    }

    private HttpResponse<String> get(String path) throws Exception {
        return Wire.get(service, path);
    }

    private static JsonNode body(HttpResponse<String> response, int status) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        return JSON.readTree(response.body());
    }

    private static JsonNode problem(HttpResponse<String> response, int status, String kind) {
        JsonNode problem = body(response, status);
        assertThat(response.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
        assertThat(problem.path("type").asString()).endsWith("/" + kind);
        return problem;
    }

    @ParameterizedTest
    @EnumSource
    void a_spot_is_kept_tried_on_and_asked_again_also_after_a_restart(Store store) throws Exception {
        stop();
        String data = store.place(folder);
        start(data);
        HttpResponse<String> begun = post("/v1/spots", TAR);
        JsonNode spot = body(begun, 201);
        String path = "/v1/spots/" + spot.path("id").asString();
        assertThat(begun.headers().firstValue("Location")).hasValue(path);
        assertThat(spot.at("/answer/next/method").asString()).isEqualTo("aliph_tar");
        assertThat(body(get(path), 200).path("answer")).isEqualTo(spot.path("answer"));
        HttpResponse<String> made = post(path + "/attempts", NO_CHANGE);
        JsonNode tried = body(made, 201);
        JsonNode attempt = tried.path("attempt");
        assertThat(made.headers().firstValue("Location")).hasValue("/v1/attempts/" + attempt.path("id").asString());
        assertThat(body(get(made.headers().firstValue("Location").orElseThrow()), 200)).isEqualTo(attempt);
        assertThat(attempt.path("contaminant").asString()).isEqualTo("tar_spot");
        assertThat(tried.at("/answer/next/method").asString()).isNotEqualTo("aliph_tar");
        assertThat(body(get("/v1/learned"), 200).path("counted").asInt()).isEqualTo(1);
        stop();
        start(data);
        JsonNode again = body(get(path), 200);
        assertThat(again.path("attempts").path(0)).isEqualTo(attempt);
        assertThat(again.path("attempts").size()).isEqualTo(1);
        assertThat(again.at("/question/tried/0/dwellMinutes").asDouble()).isEqualTo(3);
        assertThat(again.at("/answer/next")).isEqualTo(tried.at("/answer/next"));
        assertThat(body(get("/v1/learned"), 200).path("counted").asInt()).isEqualTo(1);
    }

    @Test
    void the_step_is_what_a_ladder_answers_to_the_question_of_the_spot() throws Exception {
        String path = "/v1/spots/" + body(post("/v1/spots", TAR), 201).path("id").asString();
        body(post(path + "/attempts", NO_CHANGE), 201);
        learning.lessons();
        JsonNode step = body(get(path + "/step"), 200);
        JsonNode spot = body(get(path), 200);
        assertThat(step.at("/question/tried").size()).isEqualTo(1);
        assertThat(body(post("/v1/ladders", spot.path("question").toString()), 200)).isEqualTo(spot.path("answer"));
        // the clock goes on between two answers, and with it the hours since the try
        assertThat(step.path("next")).isEqualTo(spot.at("/answer/next"));
        assertThat(step.propertyNames()).isEqualTo(spot.path("answer").propertyNames());
        assertThat(body(get(path + "/step?explain=all"), 200).toString()).hasSizeGreaterThan(step.toString().length());
        problem(get(path + "/step?explain=some"), 400, "unreadable");
        problem(get(path + "?x=1"), 400, "unreadable");
    }

    @Test
    void facts_told_later_change_the_step() throws Exception {
        String path = "/v1/spots/" + body(post("/v1/spots", TAR), 201).path("id").asString();
        JsonNode told = body(post(path + "/facts", "{\"done\":[\"washed\"],\"setting\":{\"panelC\":60}}"), 200);
        assertThat(told.at("/question/setting/panelC").asInt()).isEqualTo(60);
        assertThat(told.at("/answer/next")).isNotEqualTo(body(post("/v1/ladders", TAR), 200).path("next"));
        assertThat(problem(post(path + "/facts", "{\"done\":[\"polishd\"]}"), 422, "wrong-question").at("/errors/0/pointer").asString())
                .isEqualTo("/done/0");
        assertThat(problem(post(path + "/facts", "{\"tried\":[]}"), 422, "wrong-question").at("/errors/0/remedy").asString())
                .contains("attempts");
    }

    private static JsonNode described() throws Exception {
        return JSON.readTree(SpotsServiceTest.class.getResourceAsStream("/openapi.json"));
    }

    private static void fits(JsonNode body, String schema) throws Exception {
        ObjectNode root = JSON.createObjectNode().put("$ref", "#/components/schemas/" + schema);
        root.set("components", described().get("components"));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(root).validate(body)).as(body.toString()).isEmpty();
    }

    @Test
    void what_goes_in_and_comes_out_is_as_described() throws Exception {
        JsonNode spot = body(post("/v1/spots", TAR), 201);
        fits(spot, "SpotNow");
        String path = "/v1/spots/" + spot.path("id").asString();
        String sent = "{\"method\":\"aliph_tar\",\"outcome\":\"partly\",\"prepared\":false,\"signs\":[\"whitening\"],\"done\":[\"masked\"]}";
        fits(JSON.readTree(sent), "NewSpotAttempt");
        fits(JSON.readTree(NO_CHANGE), "NewSpotAttempt");
        fits(body(post(path + "/attempts", NO_CHANGE), 201), "SpotTried");
        fits(body(post(path + "/attempts", sent), 201), "SpotTried");
        fits(body(post(path + "/facts", "{\"done\":[\"washed\"]}"), 200), "SpotNow");
        fits(body(get(path), 200), "SpotNow");
        fits(body(get(path + "/step"), 200), "Answer");
    }

    @Test
    void every_field_that_an_attempt_on_a_spot_may_have_is_described() throws Exception {
        JsonNode schemas = described().at("/components/schemas");
        Set<String> fields = new TreeSet<>(schemas.at("/NewAttempt/properties").propertyNames());
        fields.addAll(schemas.at("/Question/properties").propertyNames());
        fields.addAll(List.of("dwellMinutes", "signs"));
        List.of("spot", "tried", "whatIf").forEach(fields::remove);
        assertThat(new TreeSet<>(schemas.at("/NewSpotAttempt/properties").propertyNames())).isEqualTo(fields);
    }

    @Test
    void a_key_keeps_one_spot_and_one_attempt_and_stands_for_nothing_else() throws Exception {
        String[] key = {"Idempotency-Key", "k1"};
        String id = body(post("/v1/spots", TAR, key), 201).path("id").asString();
        assertThat(body(post("/v1/spots", TAR, key), 201).path("id").asString()).isEqualTo(id);
        assertThat(problem(post("/v1/spots", TAR.replace("12", "13"), key), 422, "key-reused").path("detail").asString()).contains("another spot");
        String other = body(post("/v1/spots", TAR, "Idempotency-Key", "k2"), 201).path("id").asString();
        assertThat(other).isNotEqualTo(id);
        JsonNode attempt = body(post("/v1/spots/" + id + "/attempts", NO_CHANGE, key), 201).path("attempt");
        assertThat(body(post("/v1/spots/" + id.toUpperCase() + "/attempts", NO_CHANGE, key), 201).path("attempt")).isEqualTo(attempt);
        problem(post("/v1/spots/" + other + "/attempts", NO_CHANGE, key), 422, "key-reused");
        assertThat(learning.log().size()).isEqualTo(1);
    }

    @Test
    void what_is_wrong_is_pointed_at_and_nothing_is_kept() throws Exception {
        assertThat(problem(post("/v1/spots", "{\"contaminant\":\"tarr\"}"), 422, "wrong-question").path("errors"))
                .isEqualTo(problem(post("/v1/ladders", "{\"contaminant\":\"tarr\"}"), 422, "wrong-question").path("errors"));
        problem(post("/v1/spots", "{"), 400, "unreadable");
        problem(post("/v1/spots", TAR, "Content-Type", "text/csv"), 415, "not-json");
        String path = "/v1/spots/" + body(post("/v1/spots", TAR), 201).path("id").asString();
        JsonNode wrong = problem(post(path + "/attempts", "{\"method\":\"aliph_tarr\",\"outcome\":\"gone\",\"spot\":\"x\"}"), 422, "wrong-attempt");
        assertThat(wrong.path("errors").findValuesAsString("pointer")).containsExactlyInAnyOrder("/spot", "/method", "/outcome");
        assertThat(learning.log().size()).isZero();
    }

    @Test
    void an_unknown_spot_is_404_and_says_what_next() throws Exception {
        for (HttpResponse<String> response : new HttpResponse[]{get("/v1/spots/d2d2d2"), get("/v1/spots/d2d2d2/step"),
            post("/v1/spots/d2d2d2/attempts", NO_CHANGE), post("/v1/spots/d2d2d2/facts", "{\"done\":[\"washed\"]}")}) {
            assertThat(problem(response, 404, "not-found").path("detail").asString()).contains("d2d2d2").contains("POST /v1/spots");
        }
    }

    @Test
    void without_a_log_a_spot_says_how_to_get_one() throws Exception {
        service.close();
        service = Service.start(Base.advisor(), "127.0.0.1", 0);
        for (HttpResponse<String> response : new HttpResponse[]{post("/v1/spots", TAR), get("/v1/spots/d2d2d2"),
            get("/v1/spots/d2d2d2/step"), post("/v1/spots/d2d2d2/attempts", NO_CHANGE), post("/v1/spots/d2d2d2/facts", "{}"),
            get("/v1/spots"), post("/v1/spots/d2d2d2/undone", "{}")}) {
            assertThat(problem(response, 503, "no-log").path("detail").asString()).contains("--data");
        }
    }

    @Test
    void a_key_tells_facts_once_and_stands_for_no_others() throws Exception {
        String[] key = {"Idempotency-Key", "f1"};
        String path = "/v1/spots/" + body(post("/v1/spots", TAR), 201).path("id").asString();
        JsonNode first = body(post(path + "/facts", "{\"facts\":{\"clearMicrons\":41}}", key), 200);
        assertThat(body(post(path + "/facts", "{ \"facts\": {\"clearMicrons\":41} }", key), 200).at("/answer/next")).isEqualTo(first.at("/answer/next"));
        JsonNode reused = problem(post(path + "/facts", "{\"facts\":{\"clearMicrons\":12}}", key), 422, "key-reused");
        assertThat(reused.path("detail").asString()).contains("\"f1\" stands for other facts");
        assertThat(reused.path("remedy").asString()).contains("new key");
        problem(post(path + "/facts", "{\"done\":[\"washed\"]}", "Idempotency-Key", "a b"), 400, "unreadable");
        assertThat(body(get(path), 200).at("/question/facts/clearMicrons").asInt()).isEqualTo(41);
    }

    @ParameterizedTest
    @EnumSource
    void an_attempt_is_taken_back_and_teaches_nothing_also_after_a_restart(Store store) throws Exception {
        stop();
        String data = store.place(folder);
        start(data);
        String path = "/v1/spots/" + body(post("/v1/spots", TAR), 201).path("id").asString();
        JsonNode wrong = body(post(path + "/attempts", NO_CHANGE.replace("no-change", "harm")), 201).path("attempt");
        assertThat(body(get("/v1/learned"), 200).path("alarms").size()).isEqualTo(1);
        String order = "{\"attempt\":\"" + wrong.path("id").asString() + "\",\"why\":\"the spot beside it\",\"by\":\"Yard 2\"}";
        fits(JSON.readTree(order), "UndoOrder");
        HttpResponse<String> response = post(path + "/undone", order, "Idempotency-Key", "u1");
        JsonNode spot = body(response, 201);
        fits(spot, "SpotNow");
        assertThat(response.headers().firstValue("Location")).hasValue(path);
        assertThat(spot.path("attempts").isEmpty()).isTrue();
        assertThat(spot.at("/undone/0/attempt")).isEqualTo(wrong);
        assertThat(spot.at("/undone/0/by").asString()).isEqualTo("Yard 2");
        assertThat(spot.at("/undone/0/why").asString()).isEqualTo("the spot beside it");
        assertThat(body(post(path + "/undone", order, "Idempotency-Key", "u1"), 201).path("undone")).isEqualTo(spot.path("undone"));
        problem(post(path + "/undone", order.replace("beside", "above"), "Idempotency-Key", "u1"), 422, "key-reused");
        stop();
        start(data);
        assertThat(body(get(path), 200).path("undone")).isEqualTo(spot.path("undone"));
        assertThat(body(get("/v1/learned"), 200).path("counted").asInt()).isZero();
        assertThat(body(get("/v1/learned"), 200).path("alarms").isEmpty()).isTrue();
        assertThat(body(get("/v1/attempts"), 200).path("items").isEmpty()).isTrue();
        assertThat(body(get("/v1/attempts/" + wrong.path("id").asString()), 200)).as("as it was kept").isEqualTo(wrong);
    }

    @Test
    void what_cannot_be_taken_back_is_pointed_at() throws Exception {
        String path = "/v1/spots/" + body(post("/v1/spots", TAR), 201).path("id").asString();
        JsonNode problem = problem(post(path + "/undone", "{\"attempt\":\"6dd2fc32-0000-4000-8000-000000000000\",\"why\":\"x\"}"), 422, "not-undone");
        assertThat(problem.at("/errors/0/pointer").asString()).isEqualTo("/attempt");
        assertThat(problem.at("/errors/0/remedy").asString()).isNotBlank();
        assertThat(problem(post(path + "/undone", "{}"), 422, "not-undone").path("errors").findValuesAsString("pointer"))
                .containsExactlyInAnyOrder("/attempt", "/why");
        problem(post("/v1/spots/d2d2d2/undone", "{}"), 404, "not-found");
    }

    @Test
    void open_spots_are_listed_in_pages() throws Exception {
        String path = "/v1/spots/" + body(post("/v1/spots", TAR), 201).path("id").asString();
        String other = body(post("/v1/spots", "{\"surface\":\"wrap_gloss\"}"), 201).path("id").asString();
        JsonNode attempt = body(post(path + "/attempts", NO_CHANGE), 201).path("attempt");
        JsonNode first = body(get("/v1/spots?limit=1"), 200);
        fits(first, "Spots");
        assertThat(first.at("/items/0/id").asString()).isEqualTo(path.substring("/v1/spots/".length()));
        assertThat(first.at("/items/0/contaminant").asString()).isEqualTo("tar_spot");
        assertThat(first.at("/items/0/last/method").asString()).isEqualTo("aliph_tar");
        assertThat(first.at("/items/0/last/at")).isEqualTo(attempt.path("at"));
        assertThat(first.path("more").asBoolean()).isTrue();
        JsonNode second = body(get("/v1/spots?limit=1&cursor=" + first.path("next").asString()), 200);
        fits(second, "Spots");
        assertThat(second.path("items").findValuesAsString("id")).containsExactly(other);
        assertThat(second.at("/items/0").has("last")).isFalse();
        body(post(path + "/attempts", NO_CHANGE.replace("no-change", "cleared")), 201);
        assertThat(body(get("/v1/spots"), 200).path("items").findValuesAsString("id")).containsExactly(other);
        JsonNode all = body(get("/v1/spots?which=all"), 200);
        fits(all, "Spots");
        assertThat(all.path("items").size()).isEqualTo(2);
        assertThat(all.at("/items/0/open").asBoolean()).isFalse();
        for (String wrong : new String[] {"limit=0", "cursor=zzz", "which=some", "which=all&which=all", "wich=all"}) {
            assertThat(problem(get("/v1/spots?" + wrong), 400, "unreadable").path("remedy").asString()).as(wrong).isNotBlank();
        }
    }

    @Test
    void what_was_tried_on_another_surface_is_refused_by_both_doors() throws Exception {
        String id = body(post("/v1/spots", TAR), 201).path("id").asString();
        JsonNode wrong = problem(post("/v1/spots/" + id + "/attempts", "{\"method\":\"aliph_tar\",\"outcome\":\"cleared\",\"surface\":\"wrap_gloss\"}"),
                422, "wrong-attempt");
        assertThat(wrong.at("/errors/0/pointer").asString()).isEqualTo("/surface");
        assertThat(wrong.at("/errors/0/detail").asString()).contains(id).contains("clear_2k_sound").contains("wrap_gloss");
        assertThat(problem(post("/v1/attempts", "{\"contaminant\":\"tar_spot\",\"method\":\"aliph_tar\",\"outcome\":\"cleared\",\"surface\":\"wrap_gloss\","
                + "\"spot\":\"" + id.toUpperCase() + "\"}"), 422, "wrong-attempt").path("errors")).isEqualTo(wrong.path("errors"));
        assertThat(learning.log().size()).isZero();
    }
}
