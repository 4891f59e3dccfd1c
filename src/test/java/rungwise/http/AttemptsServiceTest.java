package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwise.Base;
import rungwise.shoplog.Shoplog;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The log over a real socket. */
class AttemptsServiceTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String CLEARED = "{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\","
            + "\"method\":\"aliph_tar\",\"outcome\":\"cleared\",\"minutes\":14}";
    private static final String HARM = CLEARED.replace("cleared", "harm");
    private static final String TAR = "{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\"}";

    @TempDir
    private Path folder;
    private Learning learning;
    private Service service;

    @BeforeEach
    void start() {
        start(folder.toString(), true);
    }

    private void start(String data, boolean on) {
        learning = new Learning(Shoplog.open(data), Base.advisor().knowledge(), on);
        service = Service.start(Base.advisor(), Optional.of(learning), "127.0.0.1", 0);
    }

    @AfterEach
    void stop() {
        service.close();
        learning.close();
    }

    private HttpResponse<String> send(String method, String path, String body, String... headers) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + service.port() + path))
                .method(method, body == null ? HttpRequest.BodyPublishers.noBody()
                        : HttpRequest.BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private JsonNode fits(HttpResponse<String> response, int status, String schema) throws Exception {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        JsonNode document = JSON.readTree(getClass().getResourceAsStream("/openapi.json"));
        ObjectNode root = JSON.createObjectNode().put("$ref", "#/components/schemas/" + schema);
        root.set("components", document.get("components"));
        JsonNode body = JSON.readTree(response.body());
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(root).validate(body))
                .as(response.body()).isEmpty();
        return body;
    }

    private JsonNode problem(HttpResponse<String> response, int status, String kind) throws Exception {
        assertThat(response.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        JsonNode problem = fits(response, status, "Problem");
        assertThat(problem.path("type").asString()).isEqualTo("/problems/" + kind);
        assertThat(send("GET", problem.path("type").asString(), null).body())
                .startsWith(problem.path("title").asString());
        return problem;
    }

    private double chance() throws Exception {
        for (JsonNode rung : JSON.readTree(send("POST", "/v1/ladders", TAR).body()).path("rungs")) {
            if (rung.path("method").asString().equals("aliph_tar")) {
                return rung.path("chance").path("mean").asDouble();
            }
        }
        throw new AssertionError("no aliph_tar");
    }

    @Test
    void an_attempt_is_kept_and_lies_where_the_answer_says() throws Exception {
        HttpResponse<String> response = send("POST", "/v1/attempts", CLEARED);
        JsonNode kept = fits(response, 201, "Attempt");
        String location = response.headers().firstValue("Location").orElseThrow();
        assertThat(location).isEqualTo("/v1/attempts/" + kept.path("id").asString());
        assertThat(fits(send("GET", location, null), 200, "Attempt")).isEqualTo(kept);
        assertThat(kept.path("revision").asString()).isEqualTo(Base.advisor().knowledge().revision());
        problem(send("GET", "/v1/attempts/nothing", null), 404, "not-found");
    }

    @Test
    void a_repeated_key_brings_the_first_answer_word_for_word_also_after_a_restart() throws Exception {
        HttpResponse<String> first = send("POST", "/v1/attempts", CLEARED, "Idempotency-Key", "\"k-1\"");
        stop();
        start(folder.toString(), true);
        HttpResponse<String> again = send("POST", "/v1/attempts", CLEARED, "Idempotency-Key", "\"k-1\"");
        assertThat(again.statusCode()).isEqualTo(201);
        assertThat(again.body()).isEqualTo(first.body());
        assertThat(again.headers().firstValue("Location")).isEqualTo(first.headers().firstValue("Location"));
        problem(send("POST", "/v1/attempts", HARM, "Idempotency-Key", "\"k-1\""), 422, "key-reused");
        assertThat(fits(send("GET", "/v1/attempts", null), 200, "Attempts").path("items").size()).isEqualTo(1);
    }

    @Test
    void a_key_that_is_none_is_refused() throws Exception {
        problem(send("POST", "/v1/attempts", CLEARED, "Idempotency-Key", "x".repeat(201)), 400, "unreadable");
        problem(send("POST", "/v1/attempts", CLEARED, "Idempotency-Key", "a b"), 400, "unreadable");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "{'contaminant':'tar_spot','outcome':'cleared'}|/method",
            "{'contaminant':'tar_spot','method':'aliph_tarr','outcome':'cleared'}|/method",
            "{'contaminant':'tar_spt','method':'aliph_tar','outcome':'cleared'}|/contaminant",
            "{'method':'aliph_tar','outcome':'cleared'}|/contaminant",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'gone'}|/outcome",
            "{'contaminant':'tar_spot','method':'aliph_tar'}|/outcome",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','minutes':-1}|/minutes",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','at':'yesterday'}|/at",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','at':'2999-01-01T00:00:00Z'}|/at",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','notFollowedBecause':['mood']}|/notFollowedBecause/0",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','facts':{'clearMicrons':-3}}|/facts/clearMicrons",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','note':'a\\u0000b'}|/note",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','note':'a\\ud83d'}|/note",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','shop':'../etc'}|/shop",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','minuts':3}|/minuts",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','minutes':'long'}|/minutes",
            "{'contaminant':'tar_spot','method':'aliph_tar','outcome':'harm','id':'6dd2fc32-0000-4000-8000-000000000000'}|/id",
            "[]|''"})
    void what_is_wrong_is_pointed_at_and_nothing_is_kept(String body, String pointer) throws Exception {
        JsonNode problem = problem(send("POST", "/v1/attempts", body.replace('\'', '"')), 422, "wrong-attempt");
        assertThat(problem.path("errors").findValuesAsString("pointer")).contains(pointer.replace("'", ""));
        problem.path("errors").forEach(e -> assertThat(e.path("remedy").asString()).isNotBlank());
        assertThat(learning.log().size()).isZero();
    }

    private HttpResponse<String> send(String method, String path, String body) throws Exception {
        return send(method, path, body, new String[0]);
    }

    @Test
    void a_body_that_is_not_json_and_unknown_parameters_are_refused() throws Exception {
        problem(send("POST", "/v1/attempts", "{", "Content-Type", "application/json"), 400, "unreadable");
        problem(send("POST", "/v1/attempts", CLEARED, "Content-Type", "text/csv"), 415, "not-json");
        for (String wrong : new String[]{"limit=0", "limit=1001", "limit=x", "limit=1&limit=2", "cursor=zzz", "cursor=",
            "curser=a"}) {
            problem(send("GET", "/v1/attempts?" + wrong, null), 400, "unreadable");
        }
    }

    @Test
    void pages_go_on_where_the_last_one_ended_and_a_last_page_can_be_asked_again_later() throws Exception {
        for (int i = 0; i < 5; i++) {
            send("POST", "/v1/attempts", CLEARED.replace("14", "1" + i));
        }
        String next = "";
        int seen = 0;
        for (boolean more = true; more; ) {
            JsonNode page = fits(send("GET", "/v1/attempts?limit=2" + next, null), 200, "Attempts");
            for (JsonNode item : page.path("items")) {
                assertThat(item.path("minutes").asInt()).isEqualTo(10 + seen++);
            }
            next = "&cursor=" + page.path("next").asString();
            more = page.path("more").asBoolean();
        }
        assertThat(seen).isEqualTo(5);
        send("POST", "/v1/attempts", HARM);
        JsonNode later = fits(send("GET", "/v1/attempts?limit=2" + next, null), 200, "Attempts");
        assertThat(later.path("items").findValuesAsString("outcome")).containsExactly("harm");
    }

    @Test
    void a_log_moves_the_chance_of_a_rung_and_harm_raises_an_alarm() throws Exception {
        final double before = chance();
        for (int i = 0; i < 8; i++) {
            send("POST", "/v1/attempts", CLEARED);
        }
        send("POST", "/v1/attempts", HARM);
        JsonNode lessons = fits(send("GET", "/v1/learned", null), 200, "Lessons");
        assertThat(lessons.path("counted").asInt()).isEqualTo(9);
        assertThat(lessons.path("alarms").path(0).path("method").asString()).isEqualTo("aliph_tar");
        assertThat(lessons.path("alarms").path(0).path("proposal").path("to").asInt()).isEqualTo(6);
        // by hand: the prior of likely on a hardened spot worth 20 tries, then 8 of 9 cleared
        assertThat(chance()).isCloseTo((20 * before + 8) / 29, org.assertj.core.data.Offset.offset(0.002));
        stop();
        start(folder.toString(), false);
        assertThat(chance()).as("switched off").isEqualTo(before);
        assertThat(fits(send("GET", "/v1/learned", null), 200, "Lessons").path("counted").asInt()).isEqualTo(9);
    }

    @Test
    void without_a_log_a_ladder_is_answered_and_the_log_says_how_to_get_one() throws Exception {
        stop();
        service = Service.start(Base.advisor(), "127.0.0.1", 0);
        assertThat(send("POST", "/v1/ladders", TAR).statusCode()).isEqualTo(200);
        assertThat(problem(send("POST", "/v1/attempts", CLEARED), 503, "no-log").path("detail").asString())
                .contains("--data");
        problem(send("GET", "/v1/attempts", null), 503, "no-log");
        problem(send("GET", "/v1/learned", null), 503, "no-log");
    }

    @Test
    void a_full_disk_is_507_and_a_lost_log_503_while_ladders_go_on() throws Exception {
        stop();
        String file = "jdbc:sqlite:" + Files.createDirectories(folder.resolve("full")).resolve("a.db");
        Shoplog.open(file).close();
        start(file + "?max_page_count=20", true);
        int status = 201;
        String note = CLEARED.replace("}", ",\"note\":\"" + "n".repeat(3_000) + "\"}");
        HttpResponse<String> response = null;
        for (int i = 0; i < 100 && status == 201; i++) {
            response = send("POST", "/v1/attempts", note, "Idempotency-Key", "n" + i);
            status = response.statusCode();
        }
        problem(response, 507, "log-full");
        assertThat(send("POST", "/v1/ladders", TAR).statusCode()).isEqualTo(200);
        learning.log().close();
        problem(send("POST", "/v1/attempts", CLEARED), 503, "log-unreachable");
        assertThat(send("POST", "/v1/ladders", TAR).statusCode()).isEqualTo(200);
    }
}
