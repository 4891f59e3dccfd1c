package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;
import rungwise.shoplog.Shoplog;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A morning at the demo yard over a real socket and a real log: what is it, what first, what next, what was learnt. */
class SessionTest {
    private static final JsonMapper JSON = new JsonMapper();
    /** What a single try may move a chance by: a prior is worth twenty. */
    private static final double ONE_TRY = 0.05;

    @TempDir
    private Path folder;

    @Test
    void a_spot_that_nobody_names_is_checked_climbed_cleared_and_learnt_from() throws Exception {
        JsonNode script = Mappers.yaml().readTree(Files.readString(Path.of("demo-data/session/beads-on-the-roof.yaml")));
        JsonNode ladder = script.path(1).path("body");
        double gelBefore;
        try (Learning learning = new Learning(Shoplog.open(folder.toString()), Base.advisor().knowledge(), true);
                Service service = Service.start(Base.advisor(), Optional.of(learning), "127.0.0.1", 0)) {
            double cleanerBefore = chance(service, ladder, "warm_compress");
            gelBefore = chance(service, ladder, "alc_gel");
            for (JsonNode step : script) {
                assertThat(step.path("post").asString().equals("/v1/ladders") && step.path("body").has("contaminant"))
                        .as("a ladder that names it: " + step.path("says").asString()).isFalse();
                HttpResponse<String> response = post(service, step.path("post").asString(), step.path("body"));
                assertThat(response.statusCode()).as(step.path("says").asString() + response.body()).isEqualTo(step.path("status").asInt());
                JsonNode answer = JSON.readTree(response.body());
                step.path("back").properties().forEach(back -> assertThat(answer.at(back.getKey()).asString())
                        .as(step.path("says").asString() + " " + back.getKey()).isEqualTo(back.getValue().asString()));
            }
            // the lessons are read from the log there and then; ladders follow it every two seconds
            JsonNode lessons = JSON.readTree(Wire.get(service, "/v1/learned").body());
            assertThat(lessons.path("counted").asInt()).isEqualTo(1);
            assertThat(lessons.path("leftOut").path("unknown").asInt()).as("nobody knew what it was done to").isEqualTo(1);
            assertThat(chance(service, ladder, "warm_compress")).isEqualTo(cleanerBefore);
            assertThat(chance(service, ladder, "alc_gel") - gelBefore).isPositive().isLessThan(ONE_TRY);
        }
        try (Learning off = new Learning(Shoplog.open(folder.toString()), Base.advisor().knowledge(), false);
                Service service = Service.start(Base.advisor(), Optional.of(off), "127.0.0.1", 0)) {
            assertThat(chance(service, ladder, "alc_gel")).as("with learning off").isEqualTo(gelBefore);
        }
    }

    private static double chance(Service service, JsonNode ladder, String method) throws Exception {
        for (JsonNode rung : JSON.readTree(post(service, "/v1/ladders", ladder).body()).path("rungs")) {
            if (rung.path("method").asString().equals(method)) {
                return rung.path("chance").path("mean").asDouble();
            }
        }
        throw new AssertionError(method + " is no rung");
    }

    private static HttpResponse<String> post(Service service, String path, JsonNode body) throws Exception {
        return Wire.post(service, path, JSON.writeValueAsString(body));
    }
}
