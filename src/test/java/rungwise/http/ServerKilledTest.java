package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.shoplog.OwnServer;
import rungwise.shoplog.Shoplog;

/**
 * The database server killed as by kill -9 under a running service. The service lives on, says 503 while the server is away,
 * goes on by itself when it is back, and has lost nothing it acknowledged. Few kills in a build, 200 with the profile
 * {@code hard}.
 */
class ServerKilledTest {
    private static final int KILLS = Integer.getInteger("kills", 3);
    private static final int SENDERS = 4;
    /** More than the service has threads. */
    private static final int CROWD = 300;
    private static final long BACK_WITHIN_SECONDS = 15;

    @TempDir
    private static Path folder;
    private static OwnServer server;
    private final Sender sender = new Sender();
    private Learning learning;
    private Service service;
    private int port;

    @BeforeAll
    static void startServer() throws Exception {
        server = OwnServer.in(Files.createDirectories(folder.resolve("own")));
    }

    @AfterAll
    static void stopServer() {
        if (server != null) {
            server.close();
        }
    }

    @BeforeEach
    void start() throws Exception {
        learning = new Learning(Shoplog.open(server.database()), Base.advisor().knowledge(), true);
        service = Service.start(Base.advisor(), Optional.of(learning), "127.0.0.1", 0);
        port = service.port();
    }

    @AfterEach
    void stop() {
        service.close();
        learning.close();
    }

    @Test
    void a_server_killed_and_started_again_has_every_attempt_and_the_service_goes_on_by_itself() throws Exception {
        Random random = new Random(86);
        int refusals = 0;
        int doubts = 0;
        long worstMillis = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Sender.Crowd crowd = sender.crowd(SENDERS, port, false);
            TimeUnit.MILLISECONDS.sleep(50 + random.nextInt(250));
            server.kill();
            TimeUnit.MILLISECONDS.sleep(random.nextInt(100));
            server.start();
            long back = System.nanoTime();
            List<HttpResponse<String>> refused = untilKept(crowd);
            worstMillis = Math.max(worstMillis, (System.nanoTime() - back) / 1_000_000);
            refused.forEach(ServerKilledTest::saysUnreachable);
            refusals += refused.size();
            doubts += sender.inDoubt();
            sender.sendAgain(port);
        }
        sender.holds(port);
        assertThat(refusals).isPositive();
        System.out.println("crash: " + KILLS + " kills of a PostgreSQL server, " + sender.acknowledged()
                + " attempts answered with 201, " + doubts + " in doubt and sent again, none lost, none twice; " + refusals
                + " answers of 503; writing again at most " + worstMillis + " ms after the server was back");
    }

    @Test
    void while_the_server_is_away_the_log_says_so_and_soon_and_the_rest_of_the_service_is_not_held_up() throws Exception {
        assertThat(sender.send(port).statusCode()).isEqualTo(201);
        server.kill();
        ExecutorService pool = Executors.newFixedThreadPool(CROWD);
        long start = System.nanoTime();
        List<Future<HttpResponse<String>>> sent = IntStream.range(0, CROWD).mapToObj(i -> pool.submit(
                (Callable<HttpResponse<String>>) () -> i % 20 == 0 ? sender.send(port) : sender.get(port, "/v1/attempts"))).toList();
        while (sent.stream().noneMatch(Future::isDone)) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        assertThat(sender.ladder(port).statusCode()).isEqualTo(200);
        assertThat(sender.get(port, "/health/live").statusCode()).isEqualTo(200);
        assertThat(sent).as("some still wait while ladders are answered").anyMatch(s -> !s.isDone());
        for (Future<HttpResponse<String>> one : sent) {
            saysUnreachable(one.get());
        }
        assertThat(TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - start)).isLessThan(20);
        assertThat(sent).extracting(s -> s.get().body()).anyMatch(b -> b.contains("refused"))
                .anyMatch(b -> b.contains("wait for the log already")).noneMatch(b -> b.contains("idle="));
        pool.shutdown();
        server.start();
        untilKept(sender.crowd(1, port, false));
        sender.sendAgain(port);
        sender.holds(port);
    }

    @Test
    void a_server_that_does_not_keep_its_promises_is_told_of() throws Exception {
        assertThat(learning.log().cautions()).isEmpty();
        server.run("ALTER SYSTEM SET full_page_writes = off", "SELECT pg_reload_conf()");
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(5);
        while (learning.log().cautions().isEmpty() && System.nanoTime() < end) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        assertThat(learning.log().cautions()).singleElement().asString().contains("full_page_writes off");
        server.run("ALTER SYSTEM RESET full_page_writes", "SELECT pg_reload_conf()");
    }

    /** Waits until an attempt is kept again; what was refused meanwhile. */
    private List<HttpResponse<String>> untilKept(Sender.Crowd crowd) throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(BACK_WITHIN_SECONDS);
        int before = sender.acknowledged();
        while (sender.acknowledged() == before) {
            assertThat(System.nanoTime()).as("it goes on by itself").isLessThan(end);
            TimeUnit.MILLISECONDS.sleep(5);
        }
        return crowd.stop();
    }

    private static void saysUnreachable(HttpResponse<String> refusal) {
        assertThat(refusal.statusCode()).as(refusal.body()).isEqualTo(503);
        assertThat(refusal.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        assertThat(refusal.body()).contains("/problems/log-unreachable").doesNotContain("was kept");
    }
}
