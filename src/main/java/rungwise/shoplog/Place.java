package rungwise.shoplog;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import rungwise.question.PlainText;
import rungwise.text.Texts;

/**
 * Where a log lies: a file in a folder, or a PostgreSQL server.
 *
 * @param url    for JDBC
 * @param folder that holds the file; empty for a server
 */
record Place(String url, Optional<Path> folder) {
    /** Version of the last file in the folder migrations. */
    static final String NEWEST = "5";
    private static final String FILE = "attempts.db";
    private static final int WAIT_MILLIS = 5_000;
    /** So long a request waits for a server that is away. */
    private static final int SERVER_WAIT_MILLIS = 3_000;
    private static final int IDLE_MILLIS = 120_000;
    private static final int FILE_CONNECTIONS = 3;
    private static final int SERVER_CONNECTIONS = 8;

    /**
     * From what a user gave: a folder, made if it is not there, or a JDBC URL.
     *
     * @throws LogFailure where it is neither
     */
    static Place of(String data) {
        if (data.startsWith("jdbc:postgresql:") || data.startsWith("jdbc:sqlite:")) {
            return new Place(data, Optional.empty());
        }
        if (data.startsWith("jdbc:")) {
            throw new LogFailure(LogFailure.Cause.NO_PLACE, Texts.said("log.no-place", "place", PlainText.shown(shown(data))), null);
        }
        Path folder = folder(data).orElseThrow(() -> new LogFailure(LogFailure.Cause.NO_PLACE, Texts.said("log.no-folder-named"), null));
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new LogFailure(LogFailure.Cause.NO_PLACE, Texts.said(Files.exists(folder) ? "log.folder-is-file" : "log.no-folder", "folder",
                    PlainText.shown(data)), e);
        }
        return new Place("jdbc:sqlite:" + folder.resolve(FILE), Optional.of(folder));
    }

    /** Whether there is a log already. */
    static boolean exists(String data) {
        return data.startsWith("jdbc:") || folder(data).filter(folder -> Files.exists(folder.resolve(FILE))).isPresent();
    }

    /** Nothing would stand for where the program was started, and nobody looks for a log there. */
    private static Optional<Path> folder(String data) {
        try {
            return data.isBlank() ? Optional.empty() : Optional.of(Path.of(data));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    boolean isFile() {
        return url.startsWith("jdbc:sqlite:");
    }

    /** Without what may be a password. */
    static String shown(String url) {
        return url.replaceFirst("^jdbc:sqlite:", "").replaceFirst("\\?.*", "").replaceFirst("//[^/@]*@", "//");
    }

    HikariDataSource connect() {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        config.setPoolName("log");
        config.setConnectionTimeout(isFile() ? WAIT_MILLIS : SERVER_WAIT_MILLIS);
        config.setMinimumIdle(1);
        config.setMaximumPoolSize(isFile() ? FILE_CONNECTIONS : SERVER_CONNECTIONS);
        if (isFile()) {
            // a commit returns when the disk has it; readers and the one writer do not wait for each other
            config.addDataSourceProperty("journal_mode", "WAL");
            config.addDataSourceProperty("synchronous", "FULL");
            config.addDataSourceProperty("busy_timeout", String.valueOf(WAIT_MILLIS));
            // a writer asks for its place at once: one that read first could not get it later
            config.addDataSourceProperty("transaction_mode", "IMMEDIATE");
        } else {
            // a commit returns when the server's disk has it, however the server is set; a writer does not wait for another for
            // good, nor hold the others up when its machine is gone
            config.setConnectionInitSql("SET synchronous_commit TO on; SET lock_timeout TO " + WAIT_MILLIS
                    + "; SET idle_in_transaction_session_timeout TO " + IDLE_MILLIS);
            config.addDataSourceProperty("ApplicationName", "rungwise");
            config.addDataSourceProperty("tcpKeepAlive", "true");
            config.addDataSourceProperty("connectTimeout", "5");
            config.addDataSourceProperty("socketTimeout", "60");
            config.addDataSourceProperty("reWriteBatchedInserts", "true");
        }
        return new HikariDataSource(config);
    }

    /** Brings the tables to what this program knows; one process at a time. */
    void migrate(HikariDataSource source) throws IOException {
        if (isCurrent(source)) {
            return;
        }
        if (folder.isEmpty()) {
            brought(source);
            return;
        }
        try (FileChannel lock = FileChannel.open(folder.get().resolve("opening.lock"), StandardOpenOption.CREATE,
                StandardOpenOption.WRITE); var held = lock.lock()) {
            brought(source);
        }
    }

    /** What the server itself must do for an acknowledged attempt to outlive a loss of power, and does not. */
    List<String> cautions(HikariDataSource source) {
        if (isFile()) {
            return List.of();
        }
        List<String> off = new ArrayList<>();
        try (var connection = source.getConnection(); var statement = connection.createStatement();
             var row = statement.executeQuery("SELECT name FROM pg_settings WHERE name IN ('fsync', 'full_page_writes') "
                     + "AND setting = 'off' ORDER BY name")) {
            while (row.next()) {
                off.add(Texts.said("log.setting-off", "setting", row.getString(1)));
            }
        } catch (SQLException e) {
            throw Failures.of(Texts.said("log.place-not-read", "place", shown(url)), e);
        }
        return List.copyOf(off);
    }

    /** Looks before the migrator is started, which takes longer than all the rest of opening a log. */
    private static boolean isCurrent(HikariDataSource source) {
        try (var connection = source.getConnection(); var statement = connection.createStatement();
             var row = statement.executeQuery("SELECT version, success FROM flyway_schema_history "
                     + "ORDER BY installed_rank DESC LIMIT 1")) {
            return row.next() && NEWEST.equals(row.getString(1)) && row.getBoolean(2);
        } catch (SQLException noLogYet) {
            return false;
        }
    }

    FluentConfiguration flyway(HikariDataSource source) {
        return Flyway.configure().dataSource(source).locations("classpath:migrations")
                // a log of a newer program is refused, not guessed at
                .ignoreMigrationPatterns(new String[0])
                .placeholders(Map.of("serial", isFile() ? "INTEGER PRIMARY KEY AUTOINCREMENT"
                        : "BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY"));
    }

    private void brought(HikariDataSource source) {
        try {
            flyway(source).load().migrate();
        } catch (FlywayException e) {
            throw Failures.of(Texts.said("log.not-migrated", "place", shown(url)), e);
        }
    }
}
