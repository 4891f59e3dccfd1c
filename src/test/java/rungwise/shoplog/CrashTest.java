package rungwise.shoplog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwise.question.Question;

/**
 * What was acknowledged is there afterwards, whole; what was not acknowledged is there whole or not at all. The number of
 * kills is the property {@code kills}: few in a build, 200 with the profile {@code hard}.
 */
class CrashTest {
    private static final int KILLS = Integer.getInteger("kills", 3);

    /** Of its own: a writer shall not open the knowledge before it begins. */
    private static final Instant WHEN = Instant.parse("2026-05-04T07:30:00Z");

    @TempDir
    private Path folder;

    /** The i-th attempt of a run: its id and its note say which, so that a half of it would be seen. */
    static Attempt attempt(String run, int i) {
        return new Attempt(UUID.nameUUIDFromBytes((run + "-" + i).getBytes()).toString(), WHEN, "yard",
                Optional.empty(), Optional.empty(), "tar_spot", "P12D", List.of("clear_2k_sound"), Question.Facts.NONE,
                Question.Setting.UNKNOWN, "aliph_tar", Optional.empty(), List.of(), Outcome.CLEARED, true,
                OptionalDouble.of(i), Optional.of((run + " " + i + " ").repeat(200)), Optional.empty(), "0".repeat(12));
    }

    @ParameterizedTest
    @EnumSource
    void a_writer_killed_at_any_moment_loses_nothing_it_had_acknowledged(Store store) throws Exception {
        String data = store.place(folder);
        Random random = new Random(84);
        int acknowledged = 0;
        List<Integer> seen = new ArrayList<>();
        for (int run = 0; run < KILLS; run++) {
            seen.add(runAndKill(data, "run" + run, random.nextInt(400)));
            acknowledged += seen.get(run);
            try (Shoplog log = Shoplog.open(data)) {
                holds(log, "run" + run, seen.get(run));
                assertThat(log.size()).isBetween((long) acknowledged + run, (long) acknowledged + run + 1);
                sentAgain(log, "run" + run, seen.get(run));
                assertThat(log.size()).as("once each, with the one in doubt of every run").isEqualTo(acknowledged + run + 1);
            }
        }
        try (Shoplog log = Shoplog.open(data)) {
            for (int run = 0; run < KILLS; run++) {
                holds(log, "run" + run, seen.get(run));
            }
            System.out.println("crash: " + KILLS + " kills of a writer to " + store + ", " + acknowledged
                    + " attempts acknowledged, " + log.size() + " in the log, none lost");
        }
        if (store == Store.SQLITE) {
            sound(data);
        }
        assertThat(acknowledged).isPositive();
    }

    @ParameterizedTest
    @EnumSource
    void a_writer_killed_while_it_takes_back_has_taken_back_all_that_it_said_and_lost_no_attempt(Store store) throws Exception {
        String data = store.place(folder);
        Random random = new Random(85);
        int acknowledged = 0;
        for (int run = 0; run < KILLS; run++) {
            String name = Writer.UNDOING + run;
            int seen = runAndKill(data, name, random.nextInt(400));
            acknowledged += seen;
            try (Shoplog log = Shoplog.open(data)) {
                holds(log, name, seen);
                List<Undone> undone = log.undone();
                assertThat(undone).extracting(u -> u.attempt().id()).containsAll(IntStream.range(0, seen)
                        .mapToObj(i -> attempt(name, i).id()).toList());
                assertThat(undone.size()).isBetween(acknowledged, acknowledged + run + 1);
                assertThat(log.page(Optional.empty(), 1_000).items()).as("what counts is at most the one in doubt of each run")
                        .hasSizeLessThanOrEqualTo(run + 1);
                assertThat(undone).allSatisfy(u -> assertThat(u.why()).isEqualTo(u.attempt().note().orElseThrow().substring(0, 20)));
            }
        }
        assertThat(acknowledged).isPositive();
    }

    /** A sender who heard nothing sends the same again under the same key. */
    private static void sentAgain(Shoplog log, String run, int acknowledged) {
        for (int i = 0; i <= acknowledged; i++) {
            Attempt again = attempt(run, i);
            Kept kept = log.add(again, Optional.of(Writer.key(run, i)));
            assertThat(kept.attempt()).isEqualTo(again);
            assertThat(kept.again() || i == acknowledged).as(run + " " + i + " was there").isTrue();
        }
    }

    private static void holds(Shoplog log, String run, int acknowledged) {
        for (int i = 0; i < acknowledged; i++) {
            Attempt expected = attempt(run, i);
            assertThat(log.one(expected.id())).as(run + " " + i).hasValue(expected);
        }
        Attempt next = attempt(run, acknowledged);
        log.one(next.id()).ifPresent(found -> assertThat(found).isEqualTo(next));
        assertThat(log.one(attempt(run, acknowledged + 1).id())).isEmpty();
    }

    private static void sound(String data) throws Exception {
        try (var connection = java.sql.DriverManager.getConnection(Place.of(data).url());
             var statement = connection.createStatement(); var row = statement.executeQuery("PRAGMA integrity_check")) {
            assertThat(row.getString(1)).isEqualTo("ok");
        }
    }

    /** How many attempts it acknowledged before it was killed. */
    private int runAndKill(String data, String run, int afterMillis) throws IOException, InterruptedException {
        Path natives = Files.createDirectories(folder.resolve("natives"));
        Process child = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx128m",
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Dorg.sqlite.tmpdir=" + natives,
                "-Dorg.slf4j.simpleLogger.defaultLogLevel=error", "-cp", System.getProperty("java.class.path"),
                Writer.class.getName(), data, run).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        int kept = 0;
        try (BufferedReader out = child.inputReader()) {
            String line = out.readLine();
            assertThat(line).as("the writer started").isNotNull();
            Thread killer = new Thread(() -> {
                try {
                    TimeUnit.MILLISECONDS.sleep(afterMillis);
                } catch (InterruptedException e) {
                    // kill at once
                }
                // by its handle: the process object would close its output, and acknowledgements in it would be lost
                child.toHandle().destroyForcibly();
            });
            killer.start();
            for (; line != null; line = out.readLine()) {
                kept += line.equals("kept " + kept) ? 1 : 0;
            }
            killer.join();
        } finally {
            child.destroyForcibly().waitFor();
        }
        return kept;
    }

    @Test
    void a_database_that_may_not_grow_says_so_keeps_nothing_by_half_and_goes_on_when_there_is_room() {
        String file = folder.resolve("full.db").toString();
        Shoplog.open("jdbc:sqlite:" + file).close();
        int kept = 0;
        try (Shoplog log = Shoplog.open("jdbc:sqlite:" + file + "?max_page_count=40")) {
            kept = fill(log, 0);
            List<Attempt> many = new ArrayList<>();
            for (int i = 0; i < 50; i++) {
                many.add(attempt("many", i));
            }
            assertThatThrownBy(() -> log.addAll(many.iterator())).isInstanceOfSatisfying(LogFailure.class,
                    e -> assertThat(e.why()).isEqualTo(LogFailure.Cause.FULL));
            assertThat(log.size()).isEqualTo(kept);
        }
        try (Shoplog log = Shoplog.open("jdbc:sqlite:" + file)) {
            log.add(attempt("full", kept), Optional.empty());
            holds(log, "full", kept + 1);
        }
    }

    @Test
    void a_full_disk_says_so_and_goes_on_when_there_is_room() throws Exception {
        Path disk = Files.createDirectories(folder.resolve("disk"));
        Assumptions.assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", disk.toString()),
                "The full disk was left out: this user may not mount one (the same is tested by a page limit)");
        try {
            try (Shoplog log = Shoplog.open(disk.resolve("log").toString())) {
                Path stuffing = disk.resolve("stuffing");
                log.add(attempt("full", 0), Optional.empty());
                Files.write(stuffing, new byte[200_000]);
                int kept = fill(log, 1);
                Files.delete(stuffing);
                log.add(attempt("full", kept), Optional.empty());
                holds(log, "full", kept + 1);
            }
            sound(disk.resolve("log").toString());
        } finally {
            run("umount", "-l", disk.toString());
        }
    }

    /** Adds until it is refused; how many there are then. */
    private static int fill(Shoplog log, int from) {
        for (int i = from; i < 2_000; i++) {
            try {
                log.add(attempt("full", i), Optional.empty());
            } catch (LogFailure e) {
                assertThat(e.why()).isEqualTo(LogFailure.Cause.FULL);
                assertThat(e).hasMessageContaining("make room");
                assertThat(log.size()).isEqualTo(i);
                holds(log, "full", i);
                assertThat(log.one(attempt("full", i).id())).isEmpty();
                return i;
            }
        }
        throw new AssertionError("it never became full");
    }

    private static boolean run(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
