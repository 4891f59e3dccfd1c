package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Sends attempts under keys, and remembers what it was answered, so that the log can be held against it afterwards. */
public final class Sender {
    private static final JsonMapper JSON = new JsonMapper();
    private static final Duration ANSWERED_WITHIN = Duration.ofSeconds(20);
    private static final int CREATED = 201;

    private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(ANSWERED_WITHIN).build();
    private final Map<String, String> acknowledged = new ConcurrentHashMap<>();
    private final Set<String> inDoubt = ConcurrentHashMap.newKeySet();
    private final AtomicInteger keys = new AtomicInteger();

    /** Whose note says which key it came under, so that a half of it would be seen. */
    private static String attempt(String key) {
        return "{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\",\"method\":\"aliph_tar\","
                + "\"outcome\":\"cleared\",\"note\":\"" + (key + " ").repeat(100) + "\"}";
    }

    /** Another attempt. */
    public HttpResponse<String> send(int port) throws IOException, InterruptedException {
        return send(port, "k" + keys.incrementAndGet());
    }

    private HttpResponse<String> send(int port, String key) throws IOException, InterruptedException {
        if (!acknowledged.containsKey(key)) {
            inDoubt.add(key);
        }
        HttpResponse<String> answer = client.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port
                + "/v1/attempts")).timeout(ANSWERED_WITHIN).header("Content-Type", "application/json")
                .header("Idempotency-Key", key).POST(HttpRequest.BodyPublishers.ofString(attempt(key))).build(),
                HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() == CREATED) {
            String before = acknowledged.putIfAbsent(key, answer.body());
            assertThat(before == null ? answer.body() : before).as("the first answer again").isEqualTo(answer.body());
            inDoubt.remove(key);
        }
        return answer;
    }

    public HttpResponse<String> get(int port, String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).timeout(ANSWERED_WITHIN)
                .build(), HttpResponse.BodyHandlers.ofString());
    }

    public HttpResponse<String> ladder(int port) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/v1/ladders"))
                .timeout(ANSWERED_WITHIN).header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers
                .ofString("{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\"}")).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** Several that send one attempt after another until they are told to stop, or the service is gone. */
    public final class Crowd {
        private final AtomicBoolean on = new AtomicBoolean(true);
        private final ConcurrentLinkedQueue<HttpResponse<String>> refused = new ConcurrentLinkedQueue<>();
        private final ConcurrentLinkedQueue<Throwable> failed = new ConcurrentLinkedQueue<>();
        private final List<Thread> threads;

        private Crowd(int many, int port, boolean mayVanish) {
            threads = IntStream.range(0, many).mapToObj(i -> new Thread(() -> work(port, mayVanish), "sender-" + i)).toList();
            threads.forEach(Thread::start);
        }

        private void work(int port, boolean mayVanish) {
            try {
                while (on.get()) {
                    HttpResponse<String> answer = send(port);
                    if (answer.statusCode() != CREATED) {
                        refused.add(answer);
                    }
                }
            } catch (IOException gone) {
                if (!mayVanish) {
                    failed.add(gone);
                }
            } catch (InterruptedException | RuntimeException | AssertionError e) {
                failed.add(e);
            }
        }

        /** What was refused meanwhile. */
        public List<HttpResponse<String>> refused() {
            return List.copyOf(refused);
        }

        public List<HttpResponse<String>> stop() throws InterruptedException {
            on.set(false);
            for (Thread thread : threads) {
                thread.join();
            }
            assertThat(failed).isEmpty();
            return refused();
        }
    }

    /**
     * Starts to send.
     *
     * @param mayVanish whether a connection that breaks is what the test is about
     */
    public Crowd crowd(int many, int port, boolean mayVanish) {
        return new Crowd(many, port, mayVanish);
    }

    public int acknowledged() {
        return acknowledged.size();
    }

    public int inDoubt() {
        return inDoubt.size();
    }

    /** What was not acknowledged is sent again, and some of what was: a key stands for one attempt for good. */
    public void sendAgain(int port) throws IOException, InterruptedException {
        List<String> again = new java.util.ArrayList<>(acknowledged.keySet().stream().limit(20).toList());
        again.addAll(inDoubt);
        for (String key : again) {
            assertThat(send(port, key).statusCode()).as(key).isEqualTo(CREATED);
        }
    }

    /** Every acknowledged attempt is there once and whole; beside them only attempts that were sent and not refused for good. */
    public void holds(int port) throws IOException, InterruptedException {
        Map<String, JsonNode> byNote = new java.util.HashMap<>();
        String cursor = "";
        boolean more = true;
        while (more) {
            JsonNode page = JSON.readTree(get(port, "/v1/attempts?limit=1000" + cursor).body());
            for (JsonNode item : page.path("items")) {
                assertThat(byNote.put(item.path("note").asString().trim(), item)).as("twice: " + item).isNull();
            }
            cursor = "&cursor=" + page.path("next").asString();
            more = page.path("more").asBoolean();
        }
        acknowledged.forEach((key, answer) -> assertThat(byNote.remove((key + " ").repeat(100).trim())).as(key)
                .isEqualTo(JSON.readTree(answer)));
        inDoubt.forEach(key -> byNote.remove((key + " ").repeat(100).trim()));
        assertThat(byNote).isEmpty();
    }
}
