package rungwise.shoplog;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/**
 * A PostgreSQL server of one test, which may kill it, fill its disk and start it again. It commits without waiting for the
 * disk unless a client asks for it: what holds here then holds by what the log asks for, not by how the server was set.
 */
public final class OwnServer implements AutoCloseable {
    private static final String LEFT_OUT = "The full disk of a server was left out: ";
    private static final Duration STARTS_WITHIN = Duration.ofSeconds(30);
    /** Below the ports that a system gives out by itself, so that nobody takes it while the server is away. */
    private static final int PORTS_FROM = 20_000;
    private static final int PORTS_TO = 32_000;

    private final Path binaries;
    private final Path folder;
    private final List<String> as;
    private final Optional<Process> disk;
    private final int port = port();
    private Process server;
    private int databases;

    private OwnServer(Path folder, List<String> as, Optional<Process> disk) throws IOException, InterruptedException {
        this.binaries = Server.binaries();
        this.folder = folder;
        this.as = as;
        this.disk = disk;
        Runtime.getRuntime().addShutdownHook(new Thread(this::end));
        Process made = command("initdb", "-D", data(), "-U", "postgres", "-A", "trust", "-E", "UTF8", "--no-locale", "--no-sync",
                "--wal-segsize=1").start();
        if (made.waitFor() != 0) {
            throw new IOException(log());
        }
        start();
    }

    /** A server with its data in a folder, or the test is skipped with the reason. */
    public static OwnServer in(Path folder) throws IOException, InterruptedException {
        Server.binaries();
        // it refuses user root; in a user namespace of its own it does not see that it is
        boolean root = "root".equals(System.getProperty("user.name"));
        return new OwnServer(folder, root ? List.of("unshare", "-U") : List.of(), Optional.empty());
    }

    /**
     * A server with its data on a disk of its own, so small that it can be filled, or the test is skipped with the reason.
     * The disk is memory, mounted in a namespace of its own; that takes no rights where a system lets users have such.
     */
    public static OwnServer onDiskOf(int megabytes, Path folder) throws IOException, InterruptedException {
        Server.binaries();
        Optional<Process> disk = Optional.empty();
        String said;
        try {
            disk = Optional.of(new ProcessBuilder("unshare", "-Urm", "sh", "-c", "mount -t tmpfs -o mode=777,size=" + megabytes
                    + "m tmpfs '" + folder + "' && echo mounted && exec cat").redirectErrorStream(true).start());
            said = disk.get().inputReader().readLine();
        } catch (IOException e) {
            said = e.getMessage();
        }
        Assumptions.assumeTrue("mounted".equals(said), LEFT_OUT + "no small disk can be mounted (" + said + ")");
        List<String> as = List.of("nsenter", "-t", "" + disk.orElseThrow().pid(), "-U", "-m", "--preserve-credentials",
                "unshare", "-U");
        List<String> probe = new ArrayList<>(as);
        probe.add("true");
        boolean enters;
        try {
            enters = new ProcessBuilder(probe).start().waitFor() == 0;
        } catch (IOException e) {
            enters = false;
        }
        if (!enters) {
            disk.ifPresent(Process::destroyForcibly);
        }
        Assumptions.assumeTrue(enters, LEFT_OUT + "no process gets to the small disk (nsenter)");
        return new OwnServer(folder, as, disk);
    }

    private static int port() throws IOException {
        while (true) {
            try (ServerSocket free = new ServerSocket(ThreadLocalRandom.current().nextInt(PORTS_FROM, PORTS_TO))) {
                return free.getLocalPort();
            } catch (java.net.BindException taken) {
                // the next one
            }
        }
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    private Path logFile() {
        return folder.resolveSibling(folder.getFileName() + ".log");
    }

    /** What it said since it was made. */
    public String log() throws IOException {
        return Files.readString(logFile());
    }

    private ProcessBuilder command(String binary, String... arguments) {
        List<String> all = new ArrayList<>(as);
        all.add(binaries.resolve(binary).toString());
        all.addAll(List.of(arguments));
        return new ProcessBuilder(all).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(logFile().toFile()));
    }

    private String url(String database) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + database + "?user=postgres";
    }

    /** A JDBC URL of an empty database. */
    public String database() throws SQLException {
        String name = "log" + ++databases;
        run("CREATE DATABASE " + name);
        return url(name);
    }

    public boolean runs() {
        return server.isAlive();
    }

    /** Starts it on the data that are there, and returns when it answers. */
    public void start() throws IOException, InterruptedException {
        long end = System.nanoTime() + STARTS_WITHIN.toNanos();
        while (System.nanoTime() < end) {
            if (server == null || !server.isAlive()) {
                server = command("postgres", "-D", data(), "-p", "" + port, "-k", "", "-c", "listen_addresses=127.0.0.1",
                        "-c", "fsync=on", "-c", "synchronous_commit=off",
                        // one call for the whole disk instead of one for each of a thousand files, where the system has it
                        "-c", "recovery_init_sync_method=" + (Files.isDirectory(Path.of("/proc/self")) ? "syncfs" : "fsync"),
                        "-c", "min_wal_size=2MB", "-c", "max_wal_size=1GB").start();
            }
            try (Connection there = DriverManager.getConnection(url("postgres"))) {
                return;
            } catch (SQLException notYet) {
                TimeUnit.MILLISECONDS.sleep(20);
            }
        }
        throw new IOException("the server does not start: " + log());
    }

    /** Runs SQL past the log. */
    public void run(String... statements) throws SQLException {
        run(url("postgres"), List.of(statements));
    }

    /** Runs SQL in one of its databases, past the log. */
    public static void run(String url, List<String> statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection(url); var statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    /** As kill -9 of the server and of all its processes. */
    public void kill() throws InterruptedException {
        List<ProcessHandle> children = server.descendants().toList();
        server.destroyForcibly().waitFor();
        children.forEach(ProcessHandle::destroyForcibly);
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(2);
        // not for good: where nobody fetches what is left of a dead process, it seems alive
        while (children.stream().anyMatch(ProcessHandle::isAlive) && System.nanoTime() < end) {
            TimeUnit.MILLISECONDS.sleep(2);
        }
    }

    /** Leaves no room on its disk. */
    public void fillDisk() throws IOException {
        byte[] block = new byte[4_096];
        try (var out = Files.newOutputStream(stuffing())) {
            while (true) {
                out.write(block);
            }
        } catch (IOException full) {
            if (!String.valueOf(full.getMessage()).contains("No space left")) {
                throw full;
            }
        }
    }

    public void makeRoom() throws IOException {
        Files.delete(stuffing());
    }

    /** On its disk, which only the processes in its namespace see in their folders. */
    private Path stuffing() {
        return Path.of("/proc/" + disk.orElseThrow().pid() + "/root" + folder.toAbsolutePath()).resolve("stuffing");
    }

    @Override
    public void close() {
        end();
    }

    private void end() {
        if (server != null) {
            server.descendants().forEach(ProcessHandle::destroyForcibly);
            server.destroyForcibly();
        }
        disk.ifPresent(Process::destroyForcibly);
    }
}
