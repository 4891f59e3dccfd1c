package rungwise.shoplog;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Assumptions;

/** One real PostgreSQL server for all tests of this process; each test gets a database of its own. */
public final class Server {
    private static final AtomicInteger DATABASES = new AtomicInteger();
    private static final Started STARTED = start();

    private record Started(Optional<EmbeddedPostgres> server, String why) {
    }

    private Server() {
    }

    /** For user root it starts in a user namespace of its own, as the server refuses root. */
    private static Started start() {
        try {
            EmbeddedPostgres server = EmbeddedPostgres.builder()
                    // its own defaults are those of a toy: commits that do not wait for the disk
                    .setServerConfig("fsync", "on").setServerConfig("synchronous_commit", "on")
                    .setServerConfig("full_page_writes", "on").start();
            Runtime.getRuntime().addShutdownHook(new Thread(() -> {
                try {
                    server.close();
                } catch (IOException e) {
                    // the process ends anyway
                }
            }));
            return new Started(Optional.of(server), "");
        } catch (IOException | RuntimeException e) {
            return new Started(Optional.empty(), String.valueOf(e.getMessage()));
        }
    }

    private static EmbeddedPostgres started() {
        Assumptions.assumeTrue(STARTED.server().isPresent(), "PostgreSQL was left out: no server starts here ("
                + STARTED.why() + ")");
        return STARTED.server().orElseThrow();
    }

    /** The folder of its programs, or the test is skipped with the reason. */
    static Path binaries() {
        try (var connection = started().getPostgresDatabase().getConnection();
             var statement = connection.createStatement();
             var row = statement.executeQuery("SELECT setting FROM pg_config WHERE name = 'BINDIR'")) {
            row.next();
            return Path.of(row.getString(1));
        } catch (java.sql.SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A JDBC URL of an empty database, or the test is skipped with the reason. */
    public static String database() {
        String name = "log" + DATABASES.incrementAndGet();
        try (var connection = started().getPostgresDatabase().getConnection();
             var statement = connection.createStatement()) {
            statement.execute("CREATE DATABASE " + name);
        } catch (java.sql.SQLException e) {
            throw new IllegalStateException(e);
        }
        return started().getJdbcUrl("postgres", name);
    }
}
