package rungwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.rules.said.Because;
import rungwise.shoplog.Adversary;
import rungwise.shoplog.AttemptReader;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Teacher;

/** A spot whose contaminant is not known uses what the shop learned of those that it may be, and law 11 holds for it. */
class LearnedOverBeliefTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Identifier IDENTIFIER = new Identifier(Base.advisor());
    private static final String RESIN_OR_NOT = "{observations: [form_beads, water_no_change], surface: clear_2k_sound, "
            + "age: P5D, facts: {place: horizontals}, setting: {airC: 18, panelC: 18, sun: shade, outdoors: true}, "
            + "done: [washed, dried]}";

    @TempDir
    private Path folder;

    private static Question question(String yaml) {
        return QuestionReader.read(Mappers.question().readTree(yaml), KNOWN);
    }

    /** Kept in a file, read back by another that opens it. */
    private ChanceTable learned(String place, String outcome, int times) {
        AttemptReader reader = new AttemptReader(KNOWN, InstantSource.system());
        String data = folder.resolve(place).toString();
        try (Shoplog log = Shoplog.open(data)) {
            for (int i = 0; i < times; i++) {
                log.add(reader.read(Mappers.question().readTree("{contaminant: sap_conifer, age: P5D, surface: clear_2k_sound, "
                        + "method: alc_70, outcome: " + outcome + "}")), Optional.empty());
            }
        }
        try (Shoplog log = Shoplog.open(data)) {
            return new Teacher(log, KNOWN).fresh();
        }
    }

    private static Answer.Rung alcohol(Answer answer) {
        return answer.rungs().stream().filter(r -> r.method().equals("alc_70")).findFirst().orElseThrow();
    }

    @Test
    void what_resin_taught_moves_the_chance_on_a_spot_that_may_be_resin_and_the_answer_says_so() {
        Question question = question(RESIN_OR_NOT);
        double resin = IDENTIFIER.belief(Spot.of(question)).get("sap_conifer");
        Answer prior = IDENTIFIER.ladder(question, false, ChanceTable.PRIOR);
        Answer.Rung before = alcohol(prior);
        Answer.Rung worse = alcohol(IDENTIFIER.ladder(question, false, learned("worse", "no-change", 4)));
        Answer.Rung better = alcohol(IDENTIFIER.ladder(question, false, learned("better", "cleared", 4)));
        System.out.printf(java.util.Locale.ROOT, "learned over a belief: resin believed %.2f, alcohol %.3f after 4 "
                + "failures, %.3f with an empty log, %.3f after 4 successes%n", resin, worse.chance().mean(),
                before.chance().mean(), better.chance().mean());
        assertThat(worse.chance().mean()).isLessThan(before.chance().mean() - 0.005);
        assertThat(better.chance().mean()).isGreaterThan(before.chance().mean() + 0.005);
        assertThat(before.chance().mean() - worse.chance().mean()).isLessThanOrEqualTo(0.15);
        assertThat(before.chance().basis()).isNotEqualTo("learned");
        assertThat(before.because()).extracting(Because::name).doesNotContain("learnt-here");
        for (Answer.Rung one : List.of(worse, better)) {
            assertThat(one.chance().basis()).isEqualTo("learned");
            assertThat(one.because()).filteredOn(b -> b.name().equals("learnt-here")).singleElement().satisfies(b ->
                    assertThat(Base.found(b)).contains(KNOWN.contaminants().get("sap_conifer").name()));
        }
        assertThat(alcohol(IDENTIFIER.ladder(question, false, learned("empty", "cleared", 0)))).isEqualTo(before);
    }

    @Test
    void what_the_deposit_is_believed_to_be_stays_with_the_priors() {
        Question question = question(RESIN_OR_NOT.replace("done:", "tried: [{method: alc_70, outcome: no-change}], "
                + "done:"));
        ChanceTable learned = learned("believed", "no-change", 15);
        Identification prior = IDENTIFIER.identify(Spot.of(question));
        Identification now = IDENTIFIER.identify(Spot.of(question), learned);
        assertThat(now.suspects()).isEqualTo(prior.suspects());
        assertThat(now.next().method()).isEqualTo(IDENTIFIER.ladder(question, false, learned).next().method());
    }

    /** Law 11 over a belief: a hostile log moves chances and minutes; never severity, order, bars, gates or protection. */
    @Test
    void a_hostile_log_moves_the_chances_of_an_unknown_spot_and_nothing_else() {
        Random random = new Random(20_261_125);
        List<String> signs = KNOWN.observations().values().stream().filter(o -> o.id().matches("(form|colour|feel|place)_.*")
                && !o.pointsTo().isEmpty()).map(o -> o.id()).toList();
        List<String> surfaces = List.of("clear_2k_sound", "glass_tempered_side", "wrap_gloss", "matte_satin_clear", "int_fabric_woven");
        List<String> wrong = new java.util.ArrayList<>();
        int moved = 0;
        for (int i = 0; i < 40; i++) {
            Question question = question("{observations: [" + signs.get(random.nextInt(signs.size())) + ", "
                    + signs.get(random.nextInt(signs.size())) + "], surface: " + surfaces.get(random.nextInt(surfaces.size()))
                    + ", setting: {panelC: 20, sun: shade, outdoors: true}, done: [washed, dried]}");
            String likeliest = IDENTIFIER.suspects(question).get(0).contaminant();
            Answer prior = IDENTIFIER.ladder(question, false, ChanceTable.PRIOR);
            Answer learned = IDENTIFIER.ladder(question, false, Adversary.table(random, likeliest));
            if (!prior.barred().equals(learned.barred()) || !prior.hold().equals(learned.hold())
                    || !prior.ladder().map(rungwise.answer.LadderAnswer::belief).equals(learned.ladder().map(rungwise.answer.LadderAnswer::belief))) {
                wrong.add(i + ": bars, hold or state");
            }
            List<String> was = ids(prior);
            List<String> is = ids(learned);
            List<String> both = is.stream().filter(was::contains).toList();
            if (!both.equals(was.stream().filter(is::contains).toList())) {
                wrong.add(i + ": order " + was + " and " + is);
            }
            for (Answer.Rung rung : learned.rungs()) {
                for (Answer.Rung old : prior.rungs()) {
                    if (old.method().equals(rung.method())) {
                        moved += old.chance().mean() == rung.chance().mean() ? 0 : 1;
                        if (!old.severity().equals(rung.severity()) || !old.gates().equals(rung.gates())
                                || !items(old).equals(items(rung)) || !old.dwell().equals(rung.dwell())) {
                            wrong.add(i + ": " + rung.method() + " " + old.severity() + rung.severity() + items(old) + items(rung));
                        }
                    }
                }
            }
        }
        System.out.println("law 11 over a belief: " + moved + " chances moved on 40 spots");
        assertThat(wrong).isEmpty();
        assertThat(moved).isGreaterThan(30);
    }

    private static List<String> ids(Answer answer) {
        return answer.rungs().stream().map(Answer.Rung::method).toList();
    }

    private static Set<String> items(Answer.Rung rung) {
        Set<String> items = new TreeSet<>();
        rung.ppe().forEach(p -> items.add(p.item()));
        return items;
    }
}
