package rungwise.shoplog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.question.Question;

/** A simulated year of several shops, with time and size printed. Only with -Preplay, which says how many attempts. */
class ReplayTest {
    private static final int ATTEMPTS = Integer.getInteger("replay", 0);
    private static final List<String> SHOPS = List.of("north", "south", "river", "hill", "harbour");
    private static final KnowledgeBase BASE = Base.advisor().knowledge();
    private static final int SINGLE = 2_000;

    @TempDir
    private java.nio.file.Path folder;

    /** Draws what shops would log: mostly fitting methods, which clear as often as their prior says, north a little less. */
    private static final class Simulated implements Iterator<Attempt> {
        private final Random random = new Random(9);
        private final List<String> contaminants = List.copyOf(BASE.contaminants().keySet());
        private final List<String> surfaces = List.copyOf(BASE.surfaces().keySet());
        private final List<Method> methods = BASE.methods().values().stream()
                .filter(m -> m.kind() == MethodKind.REMOVE).toList();
        private int made;
        private final int many;

        Simulated(int many) {
            this.many = many;
        }

        @Override
        public boolean hasNext() {
            return made < many;
        }

        @Override
        public Attempt next() {
            made++;
            var contaminant = BASE.contaminants().get(contaminants.get(random.nextInt(contaminants.size())));
            Method method = methods.get(random.nextInt(methods.size()));
            String shop = SHOPS.get(random.nextInt(SHOPS.size()));
            double chance = contaminant.chances(method).hardened().probability() - (shop.equals("north") ? 0.1 : 0);
            Outcome outcome = random.nextInt(500) == 0 ? Outcome.HARM : random.nextDouble() < chance ? Outcome.CLEARED
                    : random.nextInt(4) == 0 ? Outcome.PARTLY : Outcome.NO_CHANGE;
            return new Attempt(new UUID(random.nextLong(), random.nextLong()).toString(),
                    Made.NOW.plusSeconds(made * 30L), shop, Optional.of("b" + random.nextInt(6)),
                    random.nextBoolean() ? Optional.of("s" + made / 3) : Optional.empty(), contaminant.id(),
                    "P" + random.nextInt(60) + "D", List.of(surfaces.get(random.nextInt(surfaces.size()))),
                    Question.Facts.NONE, Question.Setting.UNKNOWN, method.id(), Optional.empty(), List.of(), outcome,
                    random.nextInt(20) > 0, OptionalDouble.of(1 + random.nextInt(30)), Optional.empty(), Optional.empty(),
                    BASE.revision());
        }
    }

    private interface Work {
        void run() throws Exception;
    }

    private static double seconds(Work work) throws Exception {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e9;
    }

    private static void say(String format, Object... figures) {
        System.out.println("replay: " + String.format(Locale.ROOT, format, figures));
    }

    private static void replay(String name, String data, String sizeSql) throws Exception {
        Assumptions.assumeTrue(ATTEMPTS > 0, "The replay was left out: run it with -Preplay");
        try (Shoplog log = Shoplog.open(data)) {
            long[] micros = new long[SINGLE];
            Iterator<Attempt> singles = new Simulated(SINGLE);
            for (int i = 0; i < SINGLE; i++) {
                Attempt next = singles.next();
                long start = System.nanoTime();
                log.add(next, Optional.empty());
                micros[i] = (System.nanoTime() - start) / 1000;
            }
            Arrays.sort(micros);
            say("%s: one by one, acknowledged in %d µs (median), %d µs (99 %%)", name, micros[SINGLE / 2],
                    micros[SINGLE * 99 / 100]);
            double import_ = seconds(() -> log.addAll(new Simulated(ATTEMPTS)));
            // the first ones of the same seed were there already
            assertThat(log.size()).isEqualTo(ATTEMPTS);
            say("%s: %d attempts of %d shops taken in %.1f s, %.0f a second", name, ATTEMPTS, SHOPS.size(), import_,
                    ATTEMPTS / import_);
            Teacher teacher = new Teacher(log, BASE);
            say("%s: learned from all of them in %.1f s", name, seconds(teacher::refresh));
            log.add(Made.tar("aliph_tar", "cleared", ""), Optional.empty());
            say("%s: learned from one more in %.1f ms", name, seconds(teacher::refresh) * 1000);
            Page[] page = new Page[1];
            say("%s: a page of 1000 from the middle in %.1f ms", name,
                    seconds(() -> page[0] = log.page(Optional.of(new Cursor(ATTEMPTS / 2)), 1_000)) * 1000);
            assertThat(page[0].items()).hasSize(1_000);
            List<Lessons.Move> moves = new ArrayList<>(teacher.lessons().moved());
            assertThat(moves).allMatch(m -> Math.abs(m.to() - m.from()) <= 0.1511);
            say("%s: %d chances moved, %d alarms", name, moves.size(), teacher.lessons().alarms().size());
        }
        try (var connection = java.sql.DriverManager.getConnection(Place.of(data).url());
             var statement = connection.createStatement(); var row = statement.executeQuery(sizeSql)) {
            row.next();
            say("%s: %.0f MB on the disk, %.0f bytes an attempt", name, row.getLong(1) / 1e6,
                    (double) row.getLong(1) / ATTEMPTS);
        }
    }

    @Test
    void on_a_server() throws Exception {
        Assumptions.assumeTrue(ATTEMPTS > 0, "The replay was left out: run it with -Preplay");
        replay("PostgreSQL", Server.database(), "SELECT pg_total_relation_size('attempt')");
    }

    @Test
    void in_a_file() throws Exception {
        replay("SQLite", folder.toString(),
                "SELECT page_count * page_size FROM pragma_page_count(), pragma_page_size()");
    }
}
