package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwise.shoplog.KeptSpot;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Store;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The program itself, killed as by kill -9 as soon as it has answered: the spot and all that was told of it is there. */
class SpotKilledTest {
    private static final JsonMapper JSON = new JsonMapper();

    @TempDir
    private Path folder;

    private static JsonNode post(int port, String path, String body) throws Exception {
        HttpResponse<String> answer = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(body)).build(),
                HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isBetween(200, 201);
        return JSON.readTree(answer.body());
    }

    @ParameterizedTest
    @EnumSource
    void what_was_answered_is_there_after_each_kill(Store store) throws Exception {
        String data = store.place(folder);
        String id;
        try (Served serve = new Served(folder, data)) {
            id = post(serve.port(), "/v1/spots", "{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\"}")
                    .path("id").asString();
            serve.kill();
        }
        try (Served serve = new Served(folder, data)) {
            post(serve.port(), "/v1/spots/" + id + "/attempts",
                    "{\"method\":\"aliph_tar\",\"outcome\":\"no-change\",\"done\":[\"masked\"],\"dwellMinutes\":3}");
            serve.kill();
        }
        String attempt;
        try (Shoplog log = Shoplog.open(data)) {
            attempt = log.last(1).get(0).id();
            KeptSpot spot = log.spots().one(id).orElseThrow();
            assertThat(spot.question().path("age").asString()).isEqualTo("P12D");
            assertThat(spot.attempts()).hasSize(1).isEqualTo(log.last(10));
            assertThat(spot.said()).singleElement().satisfies(said -> {
                assertThat(said.attempt()).hasValue(spot.attempts().get(0).id());
                assertThat(said.told().toString()).isEqualTo("{\"done\":[\"masked\"]}");
                assertThat(said.dwellMinutes()).hasValue(3);
            });
        }
        try (Served serve = new Served(folder, data)) {
            post(serve.port(), "/v1/spots/" + id + "/undone", "{\"attempt\":\"" + attempt + "\",\"why\":\"mistyped\"}");
            serve.kill();
        }
        try (Shoplog log = Shoplog.open(data)) {
            KeptSpot spot = log.spots().one(id).orElseThrow();
            assertThat(spot.attempts()).isEmpty();
            assertThat(spot.said()).isEmpty();
            assertThat(spot.undone()).singleElement().satisfies(undone -> assertThat(undone.attempt().id()).isEqualTo(attempt));
            assertThat(log.one(attempt)).as("nothing is written over").isPresent();
        }
    }
}
