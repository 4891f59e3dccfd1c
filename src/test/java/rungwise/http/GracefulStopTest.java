package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.shoplog.Shoplog;

/** A service that is told to stop ends what has begun, takes nothing new, and only then lets go of the log. */
class GracefulStopTest {
    private static final String ATTEMPT = "{\"contaminant\":\"tar_spot\",\"method\":\"aliph_tar\",\"outcome\":\"cleared\"}";
    private static final String QUESTION = "{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\"}";
    /** Longer than the second of silence that the server would bear by itself when it stops. */
    private static final Duration SILENCE = Duration.ofMillis(1_300);

    @TempDir
    private Path folder;

    @RepeatedTest(2)
    void an_attempt_half_received_is_kept_and_the_next_connection_refused() throws Exception {
        Learning learning = new Learning(Shoplog.open(folder.toString()), Base.advisor().knowledge(), true);
        Service service = Service.start(Base.advisor(), Optional.of(learning), "127.0.0.1", 0);
        int port = service.port();
        try (Socket idle = connected(port); Socket socket = connected(port)) {
            send(idle, "GET /health/ready HTTP/1.1\r\nHost: localhost\r\n\r\n");
            assertThat(head(idle)).startsWith("HTTP/1.1 200");
            begin(socket, "/v1/attempts", ATTEMPT);
            CompletableFuture<Void> stopped = CompletableFuture.runAsync(() -> {
                service.close();
                learning.close();
            });
            refuses(port);
            TimeUnit.MILLISECONDS.sleep(SILENCE.toMillis());
            assertThat(stopped).isNotDone();
            send(socket, secondHalf(ATTEMPT));
            String answer = rest(socket);
            assertThat(answer).startsWith("HTTP/1.1 201").containsIgnoringCase("connection: close");
            long answered = System.nanoTime();
            stopped.get(5, TimeUnit.SECONDS);
            assertThat(Duration.ofNanos(System.nanoTime() - answered)).as("an idle connection is not waited for")
                    .isLessThan(Duration.ofSeconds(4));
            String id = answer.replaceAll("(?is).*location: /v1/attempts/(\\S+).*", "$1");
            try (Shoplog log = Shoplog.open(folder.toString())) {
                assertThat(log.one(id)).isPresent();
            }
        }
    }

    @Test
    void on_a_connection_that_was_open_the_next_request_hears_that_the_service_is_stopping() throws Exception {
        Service service = Service.start(Base.advisor(), Optional.empty(), "127.0.0.1", 0);
        int port = service.port();
        try (Socket probe = connected(port); Socket socket = connected(port)) {
            begin(socket, "/v1/ladders", QUESTION);
            CompletableFuture<Void> stopped = CompletableFuture.runAsync(service::close);
            refuses(port);
            send(probe, "GET /health/ready HTTP/1.1\r\nHost: localhost\r\n\r\n");
            assertThat(rest(probe)).startsWith("HTTP/1.1 503").contains("/problems/not-ready", "is stopping");
            send(socket, secondHalf(QUESTION));
            assertThat(rest(socket)).startsWith("HTTP/1.1 200").contains("rungs");
            stopped.get(5, TimeUnit.SECONDS);
        }
    }

    @Test
    void a_request_that_does_not_end_is_cut_after_the_grace() throws Exception {
        Service service = Service.start(Base.advisor(), Optional.empty(), "127.0.0.1", 0, Duration.ofMillis(500));
        try (Socket socket = connected(service.port())) {
            begin(socket, "/v1/ladders", QUESTION);
            CompletableFuture<Void> stopped = CompletableFuture.runAsync(service::close);
            stopped.get(10, TimeUnit.SECONDS);
            assertThat(rest(socket)).doesNotContain("200 OK");
        }
    }

    /** The service asks for the body only when it has begun to answer, so what follows is surely half received. */
    private static void begin(Socket socket, String path, String body) throws IOException {
        send(socket, "POST " + path + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nExpect: 100-continue\r\n"
                + "Content-Length: " + body.length() + "\r\n\r\n");
        assertThat(head(socket)).startsWith("HTTP/1.1 100");
        send(socket, body.substring(0, body.length() / 2));
    }

    private static String secondHalf(String body) {
        return body.substring(body.length() / 2);
    }

    private static void refuses(int port) throws InterruptedException {
        long end = System.nanoTime() + Duration.ofSeconds(5).toNanos();
        while (System.nanoTime() < end) {
            try {
                new Socket("127.0.0.1", port).close();
                TimeUnit.MILLISECONDS.sleep(10);
            } catch (IOException refused) {
                return;
            }
        }
        throw new AssertionError("it still takes connections");
    }

    private static Socket connected(int port) throws IOException {
        Socket socket = new Socket("127.0.0.1", port);
        socket.setSoTimeout(8_000);
        return socket;
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
        socket.getOutputStream().flush();
    }

    /** Up to the empty line. */
    private static String head(Socket socket) throws IOException {
        ByteArrayOutputStream seen = new ByteArrayOutputStream();
        InputStream in = socket.getInputStream();
        while (!seen.toString(StandardCharsets.UTF_8).endsWith("\r\n\r\n")) {
            int next = in.read();
            if (next < 0) {
                throw new IOException("cut after: " + seen);
            }
            seen.write(next);
        }
        return seen.toString(StandardCharsets.UTF_8);
    }

    private static String rest(Socket socket) throws IOException {
        try {
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (SocketException cut) {
            return "";
        }
    }
}
