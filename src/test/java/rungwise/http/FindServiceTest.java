package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.AttemptReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Words in, over a real socket. */
class FindServiceTest {
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

    private static HttpResponse<String> find(String query) throws Exception {
        return Wire.get(service, "/v1/find" + query);
    }

    private static String q(String words) {
        return "?q=" + URLEncoder.encode(words, StandardCharsets.UTF_8);
    }

    @Test
    void a_word_is_found() throws Exception {
        JsonNode found = JSON.readTree(find(q("bird poop")).body());
        assertThat(found.path("found").path(0).path("id").asString()).isEqualTo("bird_dropping");
        assertThat(found.path("found").path(0).path("how").asString()).isEqualTo("called");
        assertThat(found.path("revision").asString()).isEqualTo(Base.advisor().knowledge().revision());
    }

    @Test
    void a_query_that_says_nothing_too_much_or_something_else_is_refused() throws Exception {
        assertThat(find("").statusCode()).isEqualTo(400);
        assertThat(find("?q=").statusCode()).isEqualTo(400);
        assertThat(find("?q=a&q=b").statusCode()).isEqualTo(400);
        assertThat(find("?word=tar").statusCode()).isEqualTo(400);
        assertThat(find(q("x".repeat(101))).statusCode()).isEqualTo(400);
    }

    @Test
    void a_wide_surface_is_refused_with_how_to_tell() throws Exception {
        HttpResponse<String> refused = Wire.post(service, "/v1/ladders", "{\"contaminant\":\"road tar\",\"surface\":\"paint\"}");
        assertThat(refused.statusCode()).isEqualTo(422);
        JsonNode error = JSON.readTree(refused.body()).path("errors").path(0);
        assertThat(error.path("pointer").asString()).isEqualTo("/surface");
        assertThat(error.path("choices").valueStream().map(c -> c.path("id").asString()).toList()).contains("single_stage_enamel");
    }

    @Test
    void an_attempt_in_words_is_kept_in_ids() {
        Attempt kept = new AttemptReader(Base.advisor().knowledge(), InstantSource.system()).read(JSON.readTree("{\"contaminant\":\"road tar\","
                + "\"age\":\"3 weeks\",\"surface\":\"clear coat\",\"method\":\"white spirit\",\"outcome\":\"cleared\"}"));
        assertThat(List.of(kept.contaminant(), kept.age(), kept.surface().get(0), kept.method()))
                .containsExactly("tar_spot", "P21D", "clear_2k_sound", "aliph_tar");
    }

    @Test
    void two_questions_that_say_the_same_in_other_words_do_not_differ() throws Exception {
        JsonNode compared = JSON.readTree(Wire.post(service, "/v1/ladders/compare", "{\"one\":{\"contaminant\":\"road tar\",\"age\":\"12 days\","
                + "\"surface\":\"clear coat\"},\"other\":{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\"}}").body());
        assertThat(compared.path("asked")).isEmpty();
    }
}
