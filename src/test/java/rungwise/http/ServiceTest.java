package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.shoplog.Shoplog;
import rungwise.start.Opened;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Over a real socket. */
class ServiceTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final String TAR = "{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\"}";
    /** Paths of which a POST keeps something. */
    private static final Set<String> KEEPS = Set.of("/v1/attempts", "/v1/spots", "/v1/spots/{id}/attempts", "/v1/spots/{id}/undone");

    @TempDir
    private static Path folder;
    private static Learning learning;
    private static Service service;

    @BeforeAll
    static void start() throws Exception {
        learning = new Learning(Shoplog.open(folder.toString()), Base.advisor().knowledge(), true);
        service = Service.start(Base.advisor(), Optional.of(learning), "127.0.0.1", 0);
        send("POST", "/v1/attempts", "{\"contaminant\":\"tar_spot\",\"method\":\"aliph_tar\",\"outcome\":\"cleared\"}");
    }

    @AfterAll
    static void stop() {
        service.close();
        learning.close();
    }

    private static HttpResponse<String> send(String method, String path, String body, String... headers)
            throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(
                URI.create("http://127.0.0.1:" + service.port() + path)).method(method,
                body == null ? HttpRequest.BodyPublishers.noBody() : HttpRequest.BodyPublishers.ofString(body));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpResponse<String> get(String path, String... headers) throws Exception {
        return send("GET", path, null, headers);
    }

    private static HttpResponse<String> ask(String body) throws Exception {
        return send("POST", "/v1/ladders", body, "Content-Type", "application/json");
    }

    private static JsonNode problem(HttpResponse<String> response, int status) throws Exception {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        assertThat(response.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        JsonNode problem = JSON.readTree(response.body());
        assertThat(problem.path("status").asInt()).isEqualTo(status);
        assertThat(problem.path("title").asString()).isNotBlank();
        assertThat(problem.path("detail").asString()).isNotBlank();
        assertThat(problem.path("remedy").asString()).as("what to do").isNotBlank().isNotEqualTo(problem.path("detail").asString());
        assertThat(get(problem.path("type").asString()).body()).startsWith(problem.path("title").asString());
        return problem;
    }

    private static String raw(String request) throws Exception {
        try (Socket socket = new Socket("127.0.0.1", service.port())) {
            socket.setSoTimeout(5_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void a_tar_spot_gets_rungs_that_no_cache_keeps() throws Exception {
        HttpResponse<String> response = ask(TAR);
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Cache-Control")).hasValue("no-store");
        assertThat(JSON.readTree(response.body()).path("rungs").size()).isPositive();
    }

    @Test
    void explain_all_names_more_barred_methods() throws Exception {
        HttpResponse<String> all = send("POST", "/v1/ladders?explain=all", TAR, "Content-Type", "application/json");
        assertThat(JSON.readTree(all.body()).path("never").size())
                .isGreaterThan(JSON.readTree(ask(TAR).body()).path("never").size());
    }

    @Test
    void a_parameter_the_service_does_not_know_is_refused() throws Exception {
        problem(send("POST", "/v1/ladders?explain=yes", TAR), 400);
        problem(send("POST", "/v1/ladders?explane=all", TAR), 400);
    }

    @Test
    void an_unknown_contaminant_is_pointed_at_with_a_near_one() throws Exception {
        JsonNode error = problem(ask("{\"contaminant\":\"tar_spt\"}"), 422).path("errors").path(0);
        assertThat(error.path("pointer").asString()).isEqualTo("/contaminant");
        assertThat(error.path("detail").asString()).contains("tar_spt");
        assertThat(error.path("remedy").asString()).contains("tar_spot");
    }

    @Test
    void an_unknown_field_is_pointed_at() throws Exception {
        JsonNode error = problem(ask("{\"contaminnt\":\"tar_spot\"}"), 422).path("errors").path(0);
        assertThat(error.path("pointer").asString()).isEqualTo("/contaminnt");
        assertThat(error.path("remedy").asString()).contains("contaminant");
    }

    @Test
    void a_negative_age_is_pointed_at() throws Exception {
        JsonNode error = problem(ask("{\"contaminant\":\"tar_spot\",\"age\":\"-P1D\"}"), 422).path("errors").path(0);
        assertThat(error.path("pointer").asString()).isEqualTo("/age");
    }

    @Test
    void a_question_that_is_a_list_is_wrong_as_a_whole() throws Exception {
        JsonNode error = problem(ask("[]"), 422).path("errors").path(0);
        assertThat(error.has("pointer")).isTrue();
        assertThat(error.path("pointer").asString()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "{\"age\":\"P1D\",\"age\":\"P2D\"}", "{} {}", "nonsense"})
    void a_body_that_is_not_one_sound_document_is_unreadable(String body) throws Exception {
        problem(ask(body), 400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"{", "{\"age\":\"P1D\",\"age\":\"P2D\"}", "{} {}", "nonsense", "{\"a\":NaN}", "{\"a\":01}", "{'a':1}", "{\"a\":1]",
        "{\"a\" 1}", "{\"a\":\"\\q\"}", "{\"a\":111111111111111111111111111111111111}", "[[[[[[[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]]]]]]]", "/*x*/{}",
        "{\"a\":Infinity}", "{\"a\":1,}"})
    void a_body_that_cannot_be_read_is_told_where_why_and_what_to_do_in_plain_words(String body) throws Exception {
        JsonNode problem = problem(ask(body), 400);
        assertThat(problem.path("detail").asString()).matches("The body is not one JSON document: at line 1, column \\d+, .+\\.");
        assertThat(problem.path("detail").asString() + problem.path("remedy").asString())
                .doesNotContainPattern("(?i)redacted|`|source|feature|stream|token|jackson|code \\d|object property");
    }

    @Test
    void a_number_that_fills_a_page_is_named_in_short() throws Exception {
        String said = problem(send("POST", "/v1/attempts", "{\"contaminant\":\"tar_spot\",\"method\":\"aliph_tar\",\"outcome\":\"partly\","
                + "\"minutes\":1e308}"), 422).path("errors").path(0).path("detail").asString();
        assertThat(said).isEqualTo("1.0E308 is out of range");
        assertThat(problem(ask("{\"setting\":{\"panelC\":-1e300}}"), 422).path("errors").path(0).path("detail").asString()).isEqualTo("-1.0E300 is out of range");
    }

    /** ESC, BEL, the one-byte CSI, and what turns the reading round. */
    @ParameterizedTest
    @ValueSource(strings = {"/v1/contaminants/%1b%5b31mx%07", "/v1/spots/%1b%5d0;x%07", "/v1/spots/%c2%9b31m/step", "/v1/attempts/%1b%e2%80%aex",
        "/v1/find?q=a&%1b%5b2J=1", "/v1/attempts?limit=%1b", "/v1/attempts?%07=%1b", "/v1/nothing/%1b%5b2J", "/v1/spots?which=%1b%07"})
    void what_was_sent_never_steers_the_terminal_of_whoever_reads_the_problem(String path) throws Exception {
        HttpResponse<String> response = get(path);
        JsonNode problem = problem(response, response.statusCode());
        assertThat(response.statusCode()).isBetween(400, 499);
        problem.properties().forEach(field -> assertThat(field.getValue().asString("")).as(field.getKey())
                .doesNotContainPattern("[\\p{Cc}\\p{Cf}]"));
        assertThat(problem.toString()).containsAnyOf("\\\\u001b", "\\\\u009b", "\\\\u0007", "limit is a number", "%1b");
    }

    @Test
    void a_deeply_nested_body_is_unreadable() throws Exception {
        problem(ask("[".repeat(3_000) + "]".repeat(3_000)), 400);
    }

    @Test
    void a_body_of_two_megabytes_is_too_large_and_the_service_lives_on() throws Exception {
        problem(ask("{\"age\":\"" + "x".repeat(2_000_000) + "\"}"), 413);
        assertThat(ask(TAR).statusCode()).isEqualTo(200);
    }

    @Test
    void a_body_of_unstated_length_is_capped_as_well() throws Exception {
        byte[] large = "x".repeat(2_000_000).getBytes(StandardCharsets.UTF_8);
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + service.port() + "/v1/ladders"))
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(large))).build();
        problem(CLIENT.send(request, HttpResponse.BodyHandlers.ofString()), 413);
    }

    @Test
    void a_body_that_says_it_is_text_is_refused() throws Exception {
        problem(send("POST", "/v1/ladders", TAR, "Content-Type", "text/plain"), 415);
    }

    @Test
    void a_wrong_method_is_told_the_right_one() throws Exception {
        HttpResponse<String> response = send("DELETE", "/v1/ladders", null);
        problem(response, 405);
        assertThat(response.headers().firstValue("Allow")).hasValue("POST");
    }

    @Test
    void a_decision_and_an_assumption_have_a_page_of_their_own() throws Exception {
        JsonNode decision = JSON.readTree(get("/v1/decisions/pointless").body());
        assertThat(decision.path("value").asDouble()).isEqualTo(Base.advisor().knowledge().decisions().value("pointless"));
        assertThat(decision.path("says").asString()).isNotBlank();
        assertThat(JSON.readTree(get("/v1/assumptions/panel-colour").body()).path("word").asString()).isEqualTo("dark");
        assertThat(JSON.readTree(get("/v1/mechanisms/dissolve").body()).path("says").asString()).contains("{deposit}");
        assertThat(problem(get("/v1/decisions/pointles"), 404).path("detail").asString()).contains("pointless");
    }

    @Test
    void no_entry_carries_what_editors_tell_one_another() throws Exception {
        for (String shelf : Shelves.NAMES) {
            for (JsonNode item : JSON.readTree(get("/v1/" + shelf).body()).path("items")) {
                String path = "/v1/" + shelf + "/" + item.path("id").asString();
                assertThat(JSON.readTree(get(path).body()).findValues("note")).as(path).isEmpty();
            }
        }
        assertThat(Base.advisor().knowledge().methods().values()).anyMatch(m -> !m.note().isEmpty());
    }

    @Test
    void an_unknown_path_is_a_problem() throws Exception {
        assertThat(problem(get("/v1/nothing"), 404).path("instance").asString()).isEqualTo("/v1/nothing");
    }

    @Test
    void an_unknown_id_is_not_found_and_carries_no_tag() throws Exception {
        HttpResponse<String> response = get("/v1/contaminants/tar_spt");
        assertThat(problem(response, 404).path("detail").asString()).contains("tar_spot");
        assertThat(response.headers().firstValue("ETag")).isEmpty();
    }

    @Test
    void a_request_that_is_broken_before_any_route_is_a_problem_too() throws Exception {
        assertThat(raw("GET /%zz HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 400").contains("application/problem+json").contains("/problems/unreadable");
    }

    @Test
    void another_host_name_is_turned_away() throws Exception {
        assertThat(raw("GET /v1/rules HTTP/1.1\r\nHost: pages.example\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 421").contains("application/problem+json");
        assertThat(raw("GET /health/live HTTP/1.1\r\nHost: localhost:1\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200");
    }

    @Test
    void a_known_revision_is_not_sent_again() throws Exception {
        HttpResponse<String> first = get("/v1/surfaces");
        String tag = first.headers().firstValue("ETag").orElseThrow();
        assertThat(tag).matches("\"" + Base.advisor().knowledge().revision() + "-[0-9a-f]{16}\"");
        for (String known : Set.of(tag, "W/" + tag, "\"older\", " + tag, "*")) {
            HttpResponse<String> again = get("/v1/surfaces", "If-None-Match", known);
            assertThat(again.statusCode()).as(known).isEqualTo(304);
            assertThat(again.body()).isEmpty();
        }
        assertThat(get("/v1/surfaces", "If-None-Match", "\"older\"").statusCode()).isEqualTo(200);
    }

    @Test
    void no_two_bodies_have_the_same_tag_and_each_is_not_sent_twice() throws Exception {
        Map<String, String> bodyByTag = new HashMap<>();
        Map<String, String> pathByTag = new HashMap<>();
        for (String shelf : Shelves.NAMES) {
            for (JsonNode item : JSON.readTree(get("/v1/" + shelf).body()).path("items")) {
                String path = "/v1/" + shelf + "/" + item.path("id").asString();
                HttpResponse<String> one = get(path);
                String tag = one.headers().firstValue("ETag").orElseThrow();
                String body = one.body();
                assertThat(bodyByTag.getOrDefault(tag, body)).as(path + " and " + pathByTag.get(tag)).isEqualTo(body);
                bodyByTag.put(tag, body);
                pathByTag.put(tag, path);
            }
        }
        assertThat(bodyByTag).hasSizeGreaterThan(300);
        assertThat(get("/v1/surfaces", "If-None-Match", String.join(", ", bodyByTag.keySet().stream().limit(50).toList()))
                .statusCode()).as("the tags of others").isEqualTo(200);
        for (String path : List.of("/openapi.json", "/v1/rules", "/v1/surfaces/clear_2k_sound")) {
            HttpResponse<String> again = get(path, "If-None-Match", get(path).headers().firstValue("ETag").orElseThrow());
            assertThat(again.statusCode()).as(path).isEqualTo(304);
            assertThat(again.headers().firstValue("ETag")).as(path).isPresent();
        }
    }

    @Test
    void what_a_shop_lays_over_the_knowledge_changes_the_tag_of_every_body() throws Exception {
        Advisor overlaid = Opened.from(Optional.empty(), Optional.empty(), Optional.of(Path.of("demo-data/products"))).orElseThrow();
        try (Service other = Service.start(overlaid, "127.0.0.1", 0)) {
            for (String shelf : Shelves.NAMES) {
                String path = "/v1/" + shelf;
                HttpResponse<String> here = get(path);
                HttpResponse<String> there = CLIENT.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + other.port() + path))
                        .header("If-None-Match", here.headers().firstValue("ETag").orElseThrow()).build(), HttpResponse.BodyHandlers.ofString());
                assertThat(there.statusCode()).as(path).isEqualTo(200);
            }
        }
    }

    @Test
    void what_the_log_moves_carries_no_tag_and_no_cache_keeps_it() throws Exception {
        for (String path : List.of("/v1/attempts", "/v1/attempts?limit=1", "/v1/learned", "/health/ready")) {
            HttpResponse<String> response = get(path, "If-None-Match", "*");
            assertThat(response.statusCode()).as(path).isEqualTo(200);
            assertThat(response.headers().firstValue("ETag")).as(path).isEmpty();
            assertThat(response.headers().firstValue("Cache-Control")).as(path).hasValue("no-store");
        }
    }

    @Test
    void the_same_knowledge_written_otherwise_has_another_tag() {
        assertThat(Tag.of("abc", new byte[] {1})).isEqualTo(Tag.of("abc", new byte[] {1}))
                .isNotEqualTo(Tag.of("abc", new byte[] {2})).isNotEqualTo(Tag.of("abd", new byte[] {1}));
    }

    @Test
    void a_head_request_has_the_tag_and_no_body() throws Exception {
        HttpResponse<String> head = send("HEAD", "/v1/rules", null);
        assertThat(head.headers().firstValue("ETag")).isPresent();
        assertThat(head.body()).isEmpty();
    }

    @Test
    void every_route_is_documented_and_every_documented_route_exists() throws Exception {
        Set<String> documented = new TreeSet<>();
        JSON.readTree(get("/openapi.json").body()).path("paths").properties().forEach(path -> path.getValue()
                .propertyNames().forEach(m -> documented.add(m.toUpperCase(java.util.Locale.ROOT) + " " + path.getKey())));
        assertThat(service.routes()).containsExactlyInAnyOrderElementsOf(documented);
    }

    /** The example of each parameter that a path cannot do without. */
    private static String query(String path) throws Exception {
        return JSON.readTree(get("/openapi.json").body()).path("paths").path(path).at("/get/parameters").valueStream()
                .filter(p -> p.path("in").asString().equals("query") && p.path("required").asBoolean())
                .map(p -> "?" + p.path("name").asString() + "=" + p.path("example").asString().replace(' ', '+')).findFirst().orElse("");
    }

    private static String spot() throws Exception {
        return JSON.readTree(send("POST", "/v1/spots", TAR).body()).path("id").asString();
    }

    /** Id of an attempt on a spot. */
    private static String tried(String spot) throws Exception {
        return JSON.readTree(send("POST", "/v1/spots/" + spot + "/attempts", "{\"method\":\"aliph_tar\",\"outcome\":\"partly\"}").body())
                .at("/attempt/id").asString();
    }

    @Test
    void a_path_that_takes_a_get_and_a_post_answers_both() throws Exception {
        for (String path : List.of("/v1/attempts", "/v1/spots")) {
            assertThat(get(path).statusCode()).as(path).isEqualTo(200);
        }
    }

    @Test
    void every_documented_route_answers() throws Exception {
        for (String path : JSON.readTree(get("/openapi.json").body()).path("paths").propertyNames()) {
            String id = path.startsWith("/problems") ? "not-found" : path.startsWith("/v1/spots/") ? spot() : path.endsWith("{id}")
                    ? JSON.readTree(get(path.replace("/{id}", "")).body()).path("items").path(0).path("id").asString()
                    : "";
            JsonNode post = JSON.readTree(get("/openapi.json").body()).path("paths").path(path).path("post");
            String example = post.at("/requestBody/content/application~1json/example").toString();
            if (path.endsWith("/undone")) {
                example = example.replaceFirst("\"attempt\":\"[^\"]*\"", "\"attempt\":\"" + tried(id) + "\"");
            }
            HttpResponse<String> response = post.isMissingNode() ? get(path.replace("{id}", id) + query(path))
                    : send("POST", path.replace("{id}", id), example, "Content-Type", "application/json");
            assertThat(response.statusCode()).as(path).isEqualTo(KEEPS.contains(path) ? 201 : 200);
        }
    }
}
