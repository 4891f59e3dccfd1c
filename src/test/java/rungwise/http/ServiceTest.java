package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.Mappers;
import tools.jackson.databind.JsonNode;

/** Over a real socket. */
class ServiceTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static Service service;

    @BeforeAll
    static void start() {
        service = Service.start(Base.advisor(), "127.0.0.1", 0);
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    private static HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + service.port() + path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static HttpResponse<String> get(String path) throws Exception {
        return send(at(path).GET());
    }

    private static HttpResponse<String> ask(String body) throws Exception {
        return send(at("/v1/ladders").POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    private static JsonNode tree(HttpResponse<String> response) {
        return Mappers.yaml().readTree(response.body());
    }

    private static void isProblem(HttpResponse<String> response, int status) {
        assertThat(response.statusCode()).isEqualTo(status);
        assertThat(response.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        JsonNode problem = tree(response);
        assertThat(problem.path("status").asInt()).isEqualTo(status);
        assertThat(problem.path("title").asString()).isNotBlank();
        assertThat(problem.path("detail").asString()).isNotBlank();
    }

    @Test
    void a_spot_gets_a_ladder_that_nobody_caches() throws Exception {
        HttpResponse<String> response = ask("{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\"}");
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Cache-Control")).hasValue("no-store");
        assertThat(tree(response).path("rungs").size()).isPositive();
        assertThat(tree(response).path("revision").asString()).isEqualTo(Base.advisor().knowledge().revision());
    }

    @Test
    void every_demo_spot_is_answered_as_json() throws Exception {
        try (var files = Files.list(Path.of("demo-data/spots"))) {
            for (Path file : files.toList()) {
                String question = Mappers.json().writeValueAsString(Mappers.yaml().readTree(Files.readString(file)));
                assertThat(ask(question).statusCode()).as(file.toString()).isEqualTo(200);
            }
        }
    }

    @Test
    void an_unknown_contaminant_is_named_with_its_pointer_and_a_near_one() throws Exception {
        HttpResponse<String> response = ask("{\"contaminant\":\"tar_spott\",\"surface\":\"clear_2k_sound\"}");
        isProblem(response, 422);
        JsonNode error = tree(response).path("errors").path(0);
        assertThat(error.path("pointer").asString()).isEqualTo("/contaminant");
        assertThat(error.path("remedy").asString()).contains("tar_spot");
    }

    @Test
    void a_typo_in_a_field_and_a_negative_age_are_named() throws Exception {
        HttpResponse<String> typo = ask("{\"contaminent\":\"tar_spot\"}");
        isProblem(typo, 422);
        assertThat(tree(typo).path("errors").path(0).path("pointer").asString()).isEqualTo("/contaminent");
        HttpResponse<String> age = ask("{\"contaminant\":\"tar_spot\",\"age\":\"-P3D\",\"surface\":\"clear_2k_sound\"}");
        isProblem(age, 422);
        assertThat(tree(age).path("errors").path(0).path("pointer").asString()).isEqualTo("/age");
    }

    @Test
    void broken_nested_and_doubled_json_is_refused_and_the_service_lives() throws Exception {
        isProblem(ask("{\"contaminant\":"), 400);
        isProblem(ask("{\"a\":".repeat(3000)), 400);
        isProblem(ask("{\"age\":\"P1D\",\"age\":\"P2D\"}"), 400);
        isProblem(ask("[]"), 422);
        assertThat(get("/health/live").statusCode()).isEqualTo(200);
    }

    @Test
    void forty_megabytes_are_refused_and_the_service_lives() throws Exception {
        HttpResponse<String> response = ask("{\"age\":\"" + "x".repeat(40_000_000) + "\"}");
        isProblem(response, 413);
        assertThat(get("/health/ready").statusCode()).isEqualTo(200);
    }

    @Test
    void a_wrong_method_an_unknown_path_and_an_unknown_entry_are_problems() throws Exception {
        isProblem(get("/v1/ladders"), 405);
        isProblem(get("/v2/anything"), 404);
        HttpResponse<String> entry = get("/v1/methods/clay_fin");
        isProblem(entry, 404);
        assertThat(tree(entry).path("detail").asString()).contains("clay_fine");
    }

    @Test
    void knowledge_carries_the_revision_and_is_not_sent_twice() throws Exception {
        String etag = get("/v1/surfaces").headers().firstValue("ETag").orElseThrow();
        assertThat(etag).isEqualTo("\"" + Base.advisor().knowledge().revision() + "\"");
        assertThat(send(at("/v1/surfaces").header("If-None-Match", "\"old\", " + etag).GET()).statusCode())
                .isEqualTo(304);
        assertThat(get("/v1/surfaces/nowhere").headers().firstValue("ETag")).isEmpty();
    }

    @Test
    void every_documented_route_answers() throws Exception {
        List<String> wrong = new ArrayList<>();
        JsonNode paths = tree(get("/openapi.json")).path("paths");
        for (String path : paths.propertyNames()) {
            String real = path.replace("{id}", switch (path.split("/").length > 2 ? path.split("/")[2] : "") {
                case "agents" -> "alc_gel";
                case "contaminants" -> "tar_spot";
                case "methods" -> "clay_fine";
                case "rules" -> "b001";
                case "sources" -> "R01";
                default -> "clear_2k_sound";
            });
            int status = paths.path(path).has("get") ? get(real).statusCode()
                    : ask("{\"surface\":\"clear_2k_sound\",\"contaminant\":\"tar_spot\"}").statusCode();
            if (status != 200) {
                wrong.add(path + " " + status);
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void every_route_is_documented() throws Exception {
        JsonNode paths = tree(get("/openapi.json")).path("paths");
        assertThat(service.paths()).isNotEmpty().allSatisfy(p -> assertThat(paths.has(p)).as(p).isTrue());
        assertThat(service.paths()).hasSize(paths.size());
    }
}
