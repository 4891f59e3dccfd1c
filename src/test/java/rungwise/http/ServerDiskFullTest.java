package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
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
    void stop() {
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
        HttpResponse<String> refused = untilRefused(() -> { });
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
        HttpResponse<String> refused = untilRefused(this::useUpTheWriteAheadLog);
        // the first where the server has said that it gives up for want of room, the second where it was gone already
        assertThat(refused.statusCode()).as(refused.body()).isIn(507, 503);
        assertThat(refused.body()).containsAnyOf("/problems/log-full", "/problems/log-unreachable").contains("acknowledged")
                .doesNotContain("Nothing of it was kept");
        assertThat(server.log()).contains("PANIC", "pg_wal", "No space left on device");
        assertThat(sender.ladder(port).statusCode()).isEqualTo(200);
        int before = sender.acknowledged();
        assertThat(before).isGreaterThan(1);
        assertThat(sender.send(port).statusCode()).isIn(503, 507);
        server.makeRoom();
        System.out.println("full disk: the server gave up after " + before + " attempts (answer " + refused.statusCode()
                + "); it "
                + (server.runs() ? "came back by itself" : "had to be started again"));
        server.start();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(15);
        while (sender.send(port).statusCode() != 201) {
            assertThat(System.nanoTime()).as("it goes on by itself").isLessThan(end);
        }
        sender.sendAgain(port);
        OwnServer.run(data, List.of("DELETE FROM attempt WHERE shop = 'x'"));
        sender.holds(port);
    }

    /** Room within the pages of table and indexes, so that attempts need none of the disk: a few rows of many are left. */
    private void makeHoles() throws Exception {
        OwnServer.run(data, List.of("INSERT INTO attempt (id, shop, at_millis, contaminant, surface, method, outcome, prepared, "
                        + "idempotency_key, fingerprint, body) SELECT md5(i::text), 'x', i, 'tar_spot', 'clear_2k_sound', "
                        + "'aliph_tar', 'harm', 1, 'k' || i || 'x', 'x', repeat('x', 1000) FROM generate_series(1, 6000) i",
                "DELETE FROM attempt WHERE shop = 'x' AND at_millis % 10 > 0", "VACUUM (TRUNCATE false) attempt", "CHECKPOINT"));
    }

    private void useUpTheWriteAheadLog() {
        try {
            server.run("SELECT pg_logical_emit_message(true, 'x', repeat('x', 50000))");
        } catch (SQLException gone) {
            // the next attempt will hear of it
        }
    }

    private HttpResponse<String> untilRefused(Runnable between) throws Exception {
        for (int i = 0; i < AT_MOST; i++) {
            HttpResponse<String> answer = sender.send(port);
            if (answer.statusCode() != 201) {
                return answer;
            }
            between.run();
        }
        throw new AssertionError("it never became full");
    }
}
