package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Queue;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.question.Question;
import rungwise.question.QuestionReader;

/**
 * Every contaminant on every surface, at four ages and three panel temperatures: the laws that one answer can break, and
 * those between neighbouring ages and temperatures. Inside meets outside too, as a spot asks nobody where it belongs.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SweepTest {
    private static final List<String> AGES = List.of("PT2H", "P2D", "P14D", "P400D");
    private static final double[] PANELS = {20, 30, 45};
    private static final Advisor ADVISOR = Base.advisor();
    private static final KnowledgeBase KNOWN = ADVISOR.knowledge();
    private static final Question PLAIN = QuestionReader.read(Mappers.question().readTree("""
            {contaminant: tar_spot, age: P12D, surface: clear_2k_sound, done: [washed, dried],
             setting: {airC: 20, panelC: 20, sun: shade, outdoors: true}}
            """), KNOWN);

    private final AtomicLong ladders = new AtomicLong();
    private final AtomicLong withRungs = new AtomicLong();
    private final Queue<String> broken = new ConcurrentLinkedQueue<>();
    private final Visits visits = new Visits(Clashes.of(ADVISOR));
    private final Breaks nowhere = new Breaks("2 every reason leads somewhere");
    private final Breaks silent = new Breaks("3 who waits says for whom");
    private final Breaks absent = new Breaks("6 nothing is left out for what is not offered");
    private final Breaks floods = new Breaks("15 no running water where nothing drains");
    private final Breaks together = new Breaks("7 what may never share a visit stands in two");
    private final Breaks needless = new Breaks("7 no visit without need");

    /** One pass over everything; each law then says what it found. */
    @BeforeAll
    void sweep() {
        long start = System.nanoTime();
        KNOWN.contaminants().keySet().parallelStream().forEach(contaminant ->
                KNOWN.surfaces().keySet().forEach(surface -> spot(contaminant, surface)));
        System.out.printf("sweep: %d ladders, %d of them with rungs, in %d s; broken: %d%n", ladders.get(),
                withRungs.get(), (System.nanoTime() - start) / 1_000_000_000L, broken.size());
    }

    @Test
    void no_law_is_broken_anywhere() {
        // one question a kind of break is enough to see it by
        Map<String, String> smallest = new TreeMap<>();
        broken.stream().sorted().forEach(b -> smallest.putIfAbsent(b.substring(0, b.indexOf(" in {")), b));
        assertThat(smallest.values()).isEmpty();
        assertThat(ladders.get()).isEqualTo((long) KNOWN.contaminants().size() * KNOWN.surfaces().size() * AGES.size()
                * PANELS.length);
    }

    @Test
    void every_reason_leads_somewhere() {
        nowhere.none();
    }

    @Test
    void a_rung_that_waits_says_for_which() {
        silent.none();
    }

    @Test
    void nothing_is_left_out_for_the_sake_of_what_is_not_offered() {
        absent.none();
    }

    @Test
    void no_water_runs_where_nothing_drains() {
        floods.none();
    }

    @Test
    void what_may_never_share_a_visit_stands_in_two() {
        together.none();
        needless.none();
    }

    private void spot(String contaminant, String surface) {
        Map<Double, Answer> younger = new TreeMap<>();
        for (String age : AGES) {
            List<Answer> cooler = new ArrayList<>();
            for (double panel : PANELS) {
                Question q = new Made(PLAIN).contaminant(contaminant).surface(List.of(surface)).age(age)
                        .setting(at(panel)).made();
                Answer answer = ADVISOR.answer(q);
                ladders.incrementAndGet();
                if (!answer.rungs().isEmpty()) {
                    withRungs.incrementAndGet();
                }
                alone(answer);
                cooler.forEach(cool -> hotterNeverAdds(cool, answer));
                if (panel >= 25) {
                    cooler.add(answer);
                }
                Answer young = younger.put(panel, answer);
                if (young != null) {
                    olderIsHarder(young, answer);
                }
            }
        }
    }

    private static Question.Setting at(double panel) {
        Question.Setting s = PLAIN.setting();
        return new Question.Setting(s.airC(), OptionalDouble.of(panel), s.sun(), s.windMs(), s.humidity(), s.indoors(),
                s.outdoors(), s.water());
    }

    private void alone(Answer answer) {
        Set<String> barred = Checks.barred(answer);
        say(answer, "1 order", Checks.order(answer));
        say(answer, "2 offered", Checks.barredButOffered(answer, barred));
        say(answer, "2 around", Checks.barredButAround(answer, Checks.barredBeyondTries(answer)));
        say(answer, "8 because", Checks.unreasoned(answer));
        say(answer, "9 protection", Checks.unprotected(answer));
        if (answer.question().setting().panelC().orElse(0) == PANELS[0]) {
            reasonsAndVisits(Placed.of(answer));
        }
    }

    /** What no panel temperature changes. */
    private void reasonsAndVisits(Placed placed) {
        nowhere.look(placed, !placed.said().isEmpty(), Reasons.unresolved(placed));
        silent.look(placed, !Reasons.moved(placed).isEmpty(), Reasons.silentWaits(placed));
        absent.look(placed, !Reasons.again(placed).isEmpty(), Reasons.absentTwins(placed));
        floods.look(placed, !Wetting.drains(KNOWN.surfaces().get(placed.question().surface().get(0))), Wetting.floods(placed));
        together.look(placed, visits.hasSuch(placed), visits.together(placed));
        needless.look(placed, placed.rungs().stream().anyMatch(r -> r.visit() > 1), visits.needless(placed));
    }

    /** Law 6, among the methods that chemistry proposes for both. */
    private void hotterNeverAdds(Answer cool, Answer hot) {
        say(hot, "6 hotter", Checks.lifted(Checks.barred(cool), Checks.barred(hot)));
    }

    /** Law 4. */
    private void olderIsHarder(Answer young, Answer old) {
        say(old, "4 age", Checks.younger(Law.belief(young), Law.belief(old)));
    }

    private void say(Answer answer, String law, List<String> wrong) {
        wrong.forEach(w -> broken.add(law + ": " + w + " in {contaminant: "
                + answer.question().contaminant().orElse("") + ", surface: " + answer.question().surface() + ", age: "
                + answer.question().age() + ", panelC: " + answer.question().setting().panelC().orElse(0) + "}"));
    }
}
