package rungwise.shoplog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.method.Method;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Choice;
import rungwise.ladder.Ladder;
import rungwise.ladder.Likely;
import rungwise.ladder.Suspects;
import rungwise.question.Question;
import rungwise.question.QuestionReader;

/**
 * Shops that the learner does not know: each pair of deposit and method is off from the trade by a jump of its own, which no pooling
 * foresees, and its spots differ. Whoever counts each try by itself gets worse there with every attempt.
 */
class StubbornShopTest {
    private static final KnowledgeBase BASE = Base.advisor().knowledge();
    private static final int ATTEMPTS = 10_000;
    private static final int SHOPS = 3;
    private static final int LEARNS_EVERY = 1_000;
    /** A chance that was tried so often has a figure to compare. */
    private static final int TRIED = 20;
    /** How often somebody begins with another method than was advised, as people do. */
    private static final double DOES_OTHERWISE = 0.2;
    private static final List<String> SPOTS = List.of("tar_spot, age: P3000D, surface: clear_2k_sound", "sap_conifer, age: PT1H, surface: clear_2k_sound",
            "insect_splatter, age: P60D, surface: clear_2k_sound", "adhesive_residue, age: P3000D, surface: clear_2k_sound",
            "brake_dust, age: P400D, surface: wheel_painted_clear", "oil_grease, age: PT2H, surface: clear_2k_sound",
            "overspray_2k, age: P300D, surface: clear_2k_sound", "sap_conifer, age: P400D, surface: glass_tempered_side");
    private static final Map<String, Double> JUMPS = new HashMap<>();
    private static double prior;
    private static double learned;
    private static double perfect;
    private static double errorBefore;
    private static double errorAfter;
    private static int compared;

    private record Kind(Question question, String surface, boolean old) {
        static Kind of(String spot) {
            Question question = QuestionReader.read(Mappers.question().readTree("{contaminant: " + spot
                    + ", setting: {airC: 18, panelC: 18, sun: shade, outdoors: true}, done: [washed, dried]}"), BASE);
            return new Kind(question, question.surface().get(0), !question.age().contains("T"));
        }

        String contaminant() {
            return question.contaminant().orElseThrow();
        }

        List<Choice> rungs(ChanceTable table) {
            return ladder(table).rungs();
        }

        Ladder ladder(ChanceTable table) {
            return Ladder.of(Base.advisor().revision(), question, Suspects.named(contaminant()), false, table);
        }

        /** Logit on a spot that is neither stubborn nor easy. */
        double truth(Method method) {
            double stated = BASE.contaminants().get(contaminant()).on(BASE.surfaces().get(surface)).chances(method).of(old).probability();
            return Math.log(stated / (1 - stated)) + JUMPS.getOrDefault(contaminant() + " " + method.id(), 0.0);
        }

        /** Minutes and what else a ladder costs on average, over spots of all kinds, by small steps and not as the program does it. */
        double cost(List<Choice> rungs) {
            double sum = 0;
            double all = 0;
            for (double u = -5; u <= 5; u += 0.05) {
                double density = Math.exp(-u * u / 2);
                double left = 1;
                double cost = 0;
                for (Choice rung : rungs) {
                    cost += left * rung.use().method().minutes().perSpot(0.1) + left * fixed(rung);
                    left *= 1 - sigmoid(truth(rung.method()) + u);
                }
                sum += density * (cost + left * BASE.decisions().value(DecisionId.HANDING_OVER));
                all += density;
            }
            return sum / all;
        }

        private static double fixed(Choice rung) {
            return rung.cost() - rung.workMinutes();
        }
    }

    private static double sigmoid(double logit) {
        return 1 / (1 + Math.exp(-logit));
    }

    private static double share(double typical) {
        double sum = 0;
        double all = 0;
        for (double u = -5; u <= 5; u += 0.05) {
            sum += Math.exp(-u * u / 2) * sigmoid(typical + u);
            all += Math.exp(-u * u / 2);
        }
        return sum / all;
    }

    @BeforeAll
    static void three_shops_work_for_ten_thousand_attempts_each() {
        for (int shop = 0; shop < SHOPS; shop++) {
            works(new Random(20_261_201 + shop));
        }
        errorAfter /= compared;
        errorBefore /= compared;
        System.out.printf(Locale.ROOT, "stubborn shops, %d attempts each: cost a spot %.2f by priors, %.2f learned, %.2f knowing all that was tried; "
                + "error of %d chances %.3f before, %.3f after%n", ATTEMPTS, prior, learned, perfect, compared, errorBefore, errorAfter);
    }

    private static void works(Random random) {
        List<Kind> kinds = SPOTS.stream().map(Kind::of).toList();
        for (Kind kind : kinds) {
            for (String method : BASE.methods().keySet()) {
                JUMPS.put(kind.contaminant() + " " + method, 2.4 * random.nextDouble() - 1.2);
            }
        }
        Learned log = new Learned(BASE);
        Map<Kind, List<Choice>> could = new HashMap<>();
        kinds.forEach(k -> could.put(k, k.ladder(ChanceTable.PRIOR).order()));
        Map<Kind, List<Choice>> ladders = new HashMap<>();
        Map<String, int[]> tried = new HashMap<>();
        int seq = 0;
        int next = 0;
        for (int spot = 0; seq < ATTEMPTS; spot++) {
            if (seq >= next) {
                ChanceTable table = seq == 0 ? ChanceTable.PRIOR : log.table();
                kinds.forEach(k -> ladders.put(k, k.rungs(table)));
                next += LEARNS_EVERY;
            }
            Kind kind = kinds.get(random.nextInt(kinds.size()));
            double own = random.nextGaussian();
            List<Choice> ladder = new ArrayList<>(ladders.get(kind));
            if (random.nextDouble() < DOES_OTHERWISE) {
                List<Choice> others = could.get(kind);
                ladder.add(0, others.get(random.nextInt(others.size())));
            }
            for (Choice rung : ladder) {
                boolean cleared = random.nextDouble() < sigmoid(kind.truth(rung.method()) + own);
                log.take(new Tried(++seq, "a" + seq, "yard", Optional.of("s" + spot), kind.contaminant(), List.of(kind.surface()),
                        kind.question().ageHours(), OptionalDouble.empty(), rung.id(), cleared ? Outcome.CLEARED : Outcome.NO_CHANGE, true,
                        OptionalDouble.empty()));
                tried.computeIfAbsent(kind.question().contaminant().orElseThrow() + " " + rung.id() + " " + kind.surface(), t -> new int[1])[0]++;
                if (cleared) {
                    break;
                }
            }
        }
        ChanceTable table = log.table();
        ChanceTable knowing = (contaminant, method, surface) -> {
            Optional<Kind> kind = kinds.stream().filter(k -> k.contaminant().equals(contaminant.id()) && BASE.surfaces().get(k.surface()).kind() == surface)
                    .findFirst();
            boolean seen = kind.isPresent() && tried.getOrDefault(contaminant.id() + " " + method.id() + " " + kind.get().surface(), new int[1])[0] >= TRIED;
            double share = kind.map(k -> share(k.truth(method))).orElse(0.0);
            return !seen ? Likely.prior(contaminant.chances(method)) : new Likely(share, share, 1, 1, true);
        };
        for (Kind kind : kinds) {
            prior += kind.cost(kind.rungs(ChanceTable.PRIOR)) / kinds.size() / SHOPS;
            learned += kind.cost(kind.rungs(table)) / kinds.size() / SHOPS;
            perfect += kind.cost(kind.rungs(knowing)) / kinds.size() / SHOPS;
            for (Method method : BASE.methods().values()) {
                if (tried.getOrDefault(kind.contaminant() + " " + method.id() + " " + kind.surface(), new int[1])[0] >= TRIED) {
                    var contaminant = BASE.contaminants().get(kind.contaminant()).on(BASE.surfaces().get(kind.surface()));
                    Likely now = table.of(contaminant, method, BASE.surfaces().get(kind.surface()).kind());
                    double truth = share(kind.truth(method));
                    errorAfter += Math.abs((kind.old() ? now.ifHardened() : now.ifFresh()) - truth);
                    errorBefore += Math.abs(contaminant.chances(method).of(kind.old()).probability() - truth);
                    compared++;
                }
            }
        }
    }

    @Test
    void their_ladders_cost_less_than_by_priors_and_hardly_more_than_by_knowing_all_that_was_tried() {
        assertThat(learned).isLessThan(0.95 * prior);
        assertThat(learned).isLessThan(1.02 * perfect);
    }

    @Test
    void their_chances_are_off_by_no_more_than_three_points() {
        assertThat(compared).isGreaterThan(60);
        assertThat(errorBefore).as("else there was nothing to learn").isGreaterThan(0.08);
        assertThat(errorAfter).isLessThanOrEqualTo(0.03);
    }
}
