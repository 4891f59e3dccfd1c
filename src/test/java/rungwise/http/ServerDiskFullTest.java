package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.shoplog.OwnServer;
import rungwise.shoplog.Shoplog;

/**
 * A database server whose disk is really full, a small disk in memory. Its tables may find no room, and then it refuses one
 * attempt after another; or its write-ahead log finds none, and then it gives up altogether, in the middle of a commit.
 */
class ServerDiskFullTest {
    private static final int MEGABYTES = 64;
    private static final int AT_MOST = 20_000;

    @TempDir
    private Path folder;
    private final Sender sender = new Sender();
    private OwnServer server;
    private String data;
    private Learning learning;
    private Service service;
    private int port;

    @BeforeEach
    void start() throws Exception {
        server = OwnServer.onDiskOf(MEGABYTES, Files.createDirectories(folder.resolve("disk")));
        data = server.database();
        learning = new Learning(Shoplog.open(data), Base.advisor().knowledge(), true);
        service = Service.start(Base.advisor(), Optional.of(learning), "127.0.0.1", 0);
        port = service.port();
    }

    @AfterEach
    void stop() throws Exception {
        if (service != null) {
            service.close();
            learning.close();
            server.close();
        }
    }

    @Test
    void an_attempt_for_which_tables_have_no_room_is_refused_with_507_and_goes_in_when_there_is_room() throws Exception {
        assertThat(sender.send(port).statusCode()).isEqualTo(201);
        server.fillDisk();
        HttpResponse<String> refused = untilRefused();
        assertThat(refused.statusCode()).as(refused.body()).isEqualTo(507);
        assertThat(refused.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        assertThat(refused.body()).contains("/problems/log-full", "make room");
        assertThat(sender.ladder(port).statusCode()).isEqualTo(200);
        sender.holds(port);
        int before = sender.acknowledged();
        server.makeRoom();
        sender.sendAgain(port);
        assertThat(sender.acknowledged()).isGreaterThan(before);
        assertThat(sender.inDoubt()).isZero();
        sender.holds(port);
        assertThat(server.log()).contains("No space left on device").doesNotContain("PANIC");
    }

    @Test
    void a_server_that_gives_up_in_a_commit_for_want_of_room_has_lost_nothing_when_it_is_back() throws Exception {
        assertThat(sender.send(port).statusCode()).isEqualTo(201);
        makeHoles();
        server.fillDisk();
        HttpResponse<String> refused = untilRefused();
        assertThat(refused.statusCode()).as(refused.body()).isEqualTo(503);
        assertThat(refused.body()).contains("/problems/log-unreachable");
        assertThat(server.log()).contains("PANIC", "pg_wal", "No space left on device");
        assertThat(sender.ladder(port).statusCode()).isEqualTo(200);
        int before = sender.acknowledged();
        assertThat(before).isGreaterThan(1);
        server.makeRoom();
        System.out.println("full disk: the server gave up after " + before + " attempts; it "
                + (server.runs() ? "came back by itself" : "had to be started again"));
        server.start();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(15);
        while (sender.send(port).statusCode() != 201) {
            assertThat(System.nanoTime()).as("it goes on by itself").isLessThan(end);
        }
        sender.sendAgain(port);
        sender.holds(port);
    }

    /** Room within the tables, so that they need none of the disk. */
    private void makeHoles() throws Exception {
        OwnServer.run(data, List.of("INSERT INTO attempt (id, shop, at_millis, contaminant, surface, method, outcome, prepared, "
                        + "idempotency_key, fingerprint, body) SELECT md5(i::text), 'x', i, 'x', 'x', 'x', 'harm', 1, 'k' || i, "
                        + "'x', repeat('x', 1000) FROM generate_series(1, 6000) i",
                "DELETE FROM attempt WHERE shop = 'x'", "VACUUM (TRUNCATE false) attempt", "CHECKPOINT"));
    }

    private HttpResponse<String> untilRefused() throws Exception {
        for (int i = 0; i < AT_MOST; i++) {
            HttpResponse<String> answer = sender.send(port);
            if (answer.statusCode() != 201) {
                return answer;
            }
        }
        throw new AssertionError("it never became full");
    }
}
