package rungwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import rungwise.question.Question;
import rungwise.question.QuestionReader;

/**
 * Law 5 where nobody knows what it is. For a known contaminant nothing gentler than a failed rung comes back, since what a
 * harsher one leaves a gentler one mostly leaves too. That holds for one deposit; a failure also says what the deposit is
 * not. So on an unknown spot a gentler method may come after a harsher one that changed nothing, on two conditions: it was
 * never tried on the spot, and its chance over all that the spot may be rose by that failure. The answer then says so, with both
 * chances of a spot that is no more stubborn than others; the chance it shows also reckons with how stubborn this one is. What
 * was tried on a prepared panel and changed nothing never comes back.
 */
class LawFiveOverBeliefTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Identifier IDENTIFIER = new Identifier(Base.advisor());
    private static final List<String> SURFACES = List.of("clear_2k_sound", "glass_tempered_side", "wrap_gloss",
            "matte_satin_clear", "int_fabric_woven", "wheel_painted_clear", "rubber_epdm_seal");

    /**
     * Known to break it. The order is settled on what is offered; with other company a slow gentle one may stand behind the
     * harsher one it stood before, and then stays without a word.
     */
    private static final int SETTLED_ANEW = 4;

    private static Question question(List<String> signs, String surface, List<String> failed) {
        List<String> tried = failed.stream().map(m -> "{method: " + m + ", outcome: no-change, dwellMinutes: 1, hoursAgo: 1}")
                .toList();
        return QuestionReader.read(Mappers.question().readTree("{observations: [" + String.join(", ", signs) + "], surface: "
                + surface + ", setting: {panelC: 20, sun: shade, outdoors: true}, done: [washed, dried], tried: ["
                + String.join(", ", tried) + "]}"), KNOWN);
    }

    private static Answer ladder(Question question) {
        return IDENTIFIER.ladder(question, false, ChanceTable.PRIOR);
    }

    private static List<String> ids(Answer answer) {
        return answer.rungs().stream().map(Answer.Rung::method).toList();
    }

    /** Its chance wherever it stands. */
    private static double chance(Answer answer, String method) {
        return Stream.of(answer.rungs().stream().filter(r -> r.method().equals(method)).map(r -> r.chance().mean()),
                answer.alternatives().stream().filter(a -> a.method().equals(method)).map(a -> a.rung().chance().mean()),
                answer.passedOver().stream().filter(p -> p.method().equals(method)).map(Answer.PassedOver::chance))
                .flatMap(s -> s).findFirst().orElse(0.0);
    }

    private record Climb(int failures, int gentlerAgain, int rose, List<String> wrong) {
    }

    private static final List<String> SIGNS = KNOWN.observations().values().stream().filter(o -> !o.pointsTo().isEmpty()
            && o.stops().isEmpty() && o.id().matches("(form|colour|feel|place|water)_.*")).map(o -> o.id()).toList();

    /** Fails one rung after another; the rung that is tried is now the first, now any. */
    private static Climb climbed(int spots, Random random) {
        int failures = 0;
        int again = 0;
        List<String> wrong = new ArrayList<>();
        int rose = 0;
        for (int i = 0; i < spots; i++) {
            List<String> signs = List.of(SIGNS.get(random.nextInt(SIGNS.size())), SIGNS.get(random.nextInt(SIGNS.size())));
            String surface = SURFACES.get(random.nextInt(SURFACES.size()));
            List<String> failed = new ArrayList<>();
            Answer untried = ladder(question(signs, surface, failed));
            Answer before = untried;
            while (failed.size() < 4 && !before.rungs().isEmpty()) {
                int at = random.nextBoolean() ? 0 : random.nextInt(before.rungs().size());
                String tried = ids(before).get(at);
                failed.add(tried);
                Question now = question(signs, surface, failed);
                Answer after = ladder(now);
                failures++;
                String where = signs + " on " + surface + " after " + failed + ": " + ids(before) + " became " + ids(after);
                Set<String> offered = new TreeSet<>(ids(after));
                after.alternatives().forEach(a -> offered.add(a.method()));
                after.next().method().filter(m -> !after.next().action().matches("leave|refer")).ifPresent(offered::add);
                failed.stream().filter(offered::contains).forEach(f -> wrong.add(f + " failed and is back; " + where));
                for (String skipped : ids(before).subList(0, at)) {
                    Answer.Rung rung = after.rungs().stream().filter(r -> r.method().equals(skipped)).findFirst().orElse(null);
                    if (rung == null) {
                        continue;
                    }
                    boolean owed = Base.advisor().comesBefore(skipped, tried);
                    boolean said = rung.because().stream().anyMatch(b -> b.name().equals("comes-back"));
                    boolean likelier = rung.because().stream().filter(b -> b.name().equals("comes-back")).flatMap(b -> b.figures().stream())
                            .anyMatch(f -> f.name().equals("chanceNow") && Double.parseDouble(f.value().toString()) > Double.parseDouble(f.limit().orElseThrow().toString()));
                    again++;
                    rose += said ? 1 : 0;
                    if (!(owed || said && likelier)) {
                        wrong.add(skipped + " is back, said " + said + ", likelier " + likelier + "; " + where);
                    }
                }
                before = after;
            }
        }
        return new Climb(failures, again, rose, wrong);
    }

    @Test
    void a_gentler_one_comes_back_only_untried_and_likelier_and_the_answer_says_why() {
        Climb climb = climbed(45, new Random(20_261_125));
        System.out.println("law 5 over a belief: " + climb.failures() + " failures, " + climb.gentlerAgain()
                + " times a skipped gentler one stayed, " + climb.rose() + " of them as its chance rose");
        assertThat(climb.wrong()).filteredOn(w -> w.contains("failed and is back")).isEmpty();
        assertThat(climb.wrong()).hasSizeLessThanOrEqualTo(SETTLED_ANEW);
        assertThat(climb.failures()).isGreaterThan(60);
    }

    @Test
    void a_certain_belief_keeps_law_five_as_a_known_contaminant_does() {
        for (String contaminant : List.of("tar_spot", "sap_conifer", "bird_dropping", "insect_splatter")) {
            Question untried = question(List.of("form_beads"), "clear_2k_sound", List.of());
            List<String> rungs = ids(Base.advisor().answer(untried.about(contaminant)));
            for (int i = 0; i < rungs.size(); i++) {
                Question after = question(List.of("form_beads"), "clear_2k_sound", List.of(rungs.get(i)));
                Answer known = Base.advisor().answer(after.about(contaminant));
                Answer mixed = Base.advisor().answer(after, rungwise.ladder.Suspects.named(contaminant), false, ChanceTable.PRIOR);
                assertThat(ids(known)).as(contaminant + " after " + rungs.get(i)).containsAll(ids(mixed));
            }
        }
    }
}
