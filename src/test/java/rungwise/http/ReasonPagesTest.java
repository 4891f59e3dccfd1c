package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The id of every reason in an answer is a path of the service, and there is something behind it. */
class ReasonPagesTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    /** As a reason is called wherever it stands, as a value or as the name of a field. */
    private static final Pattern ID = Pattern.compile("[a-z]+/[A-Za-z0-9_-]+");
    private static final List<String> QUESTIONS = List.of(
            "{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\"}",
            "{\"contaminant\":\"fallout_iron\",\"surface\":\"clear_2k_sound\",\"setting\":{\"airC\":30,\"sun\":\"direct\"}}",
            "{\"contaminant\":\"coffee_tea\",\"age\":\"P2D\",\"surface\":\"int_fabric_woven\",\"canWaitMinutes\":60}",
            "{\"contaminant\":\"tar_spot\",\"surface\":\"clear_2k_sound\",\"circumstances\":[\"battery_smoke\"]}",
            "{\"contaminant\":\"water_spot_mineral\",\"age\":\"P20D\",\"surface\":\"glass_laminated_screen\",\"tried\":"
                    + "[{\"method\":\"acid_mild\",\"outcome\":\"no-change\",\"hoursAgo\":1}]}",
            "{\"observations\":[\"form_beads\",\"feel_sticky\"],\"age\":\"P5D\",\"surface\":\"clear_2k_sound\"}");
    private static Service service;

    @BeforeAll
    static void start() {
        service = Service.start(Base.advisor(), Optional.empty(), "127.0.0.1", 0);
    }

    @AfterAll
    static void stop() {
        service.close();
    }

    private static HttpResponse<String> send(HttpRequest.Builder request, String path) throws Exception {
        return CLIENT.send(request.uri(URI.create("http://127.0.0.1:" + service.port() + path)).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private static void collect(JsonNode node, Set<String> ids) {
        if (node.isString() && ID.matcher(node.asString()).matches()) {
            ids.add(node.asString());
        }
        node.propertyNames().stream().filter(n -> ID.matcher(n).matches()).forEach(ids::add);
        node.values().forEach(child -> collect(child, ids));
    }

    @Test
    void every_reason_of_an_answer_has_a_page_below_v1() throws Exception {
        Set<String> ids = new TreeSet<>();
        for (String question : QUESTIONS) {
            HttpResponse<String> answer = send(HttpRequest.newBuilder().header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(question)), "/v1/ladders?explain=all");
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
            collect(JSON.readTree(answer.body()), ids);
        }
        assertThat(ids).as("reasons met").hasSizeGreaterThan(60).anyMatch(i -> i.startsWith("rules/"))
                .anyMatch(i -> i.startsWith("decisions/"));
        List<String> nowhere = new ArrayList<>();
        for (String id : ids) {
            if (send(HttpRequest.newBuilder().GET(), "/v1/" + id).statusCode() != 200) {
                nowhere.add(id);
            }
        }
        System.out.println("reasons: " + ids.size() + " met over the wire, " + nowhere.size() + " lead nowhere");
        assertThat(nowhere).isEmpty();
    }
}
