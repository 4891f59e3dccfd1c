package rungwise.shoplog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.ladder.Likely;

/** What a log teaches, worked out by hand. */
class LearnedTest {
    private static final KnowledgeBase BASE = Base.advisor().knowledge();
    private final Learned learned = new Learned(BASE);
    private long seq;

    private void take(int times, Attempt attempt) {
        for (int i = 0; i < times; i++) {
            learned.take(Tried.of(++seq, attempt));
        }
    }

    private Likely likely(String method, SurfaceKind surface) {
        return learned.table().of(BASE.contaminants().get("tar_spot"), BASE.methods().get(method), surface);
    }

    /** Old enough that hardened is as good as certain. */
    private static Attempt old(String outcome, String more) {
        return Made.attempt("{contaminant: tar_spot, age: P3000D, surface: clear_2k_sound, method: aliph_tar, outcome: "
                + outcome + more + "}");
    }

    private static double prior(String method) {
        return BASE.contaminants().get("tar_spot").chances(BASE.methods().get(method)).hardened().probability();
    }

    @Test
    void ten_tries_of_which_three_cleared_draw_a_higher_prior_most_of_the_way_to_three_in_ten() {
        take(3, old("cleared", ""));
        take(7, old("no-change", ""));
        double p = prior("aliph_tar");
        double now = likely("aliph_tar", SurfaceKind.PAINT).ifHardened();
        assertThat(p).isGreaterThan(0.6);
        // a prior worth five against ten tries: somewhat less than two thirds of the way, as spots that differ tell less each
        assertThat(now).isBetween(0.3 + 0.25 * (p - 0.3), 0.3 + 0.6 * (p - 0.3));
        assertThat(likely("aliph_tar", SurfaceKind.PAINT).learned()).isTrue();
        assertThat(likely("aliph_tar", SurfaceKind.PAINT).triesHardened()).isCloseTo(10, within(0.01));
    }

    @Test
    void a_few_tries_move_a_chance_a_little_and_many_tell_what_it_is() {
        take(1, old("no-change", ""));
        double once = likely("aliph_tar", SurfaceKind.PAINT).ifHardened();
        assertThat(prior("aliph_tar") - once).isPositive().isLessThan(0.15);
        take(499, old("no-change", ""));
        take(500, old("cleared", ""));
        assertThat(likely("aliph_tar", SurfaceKind.PAINT).ifHardened()).isCloseTo(0.5, within(0.01));
    }

    @Test
    void what_fails_on_a_spot_that_beat_another_before_is_blamed_less_than_what_fails_on_a_new_one() {
        Learned second = new Learned(BASE);
        Learned first = new Learned(BASE);
        for (int i = 1; i <= 200; i++) {
            // what mostly works leaves the stubborn ones
            for (Learned one : List.of(first, second)) {
                one.take(Tried.of(3L * i, resin("alc_gel", "cleared", "c" + i)));
            }
        }
        for (int i = 1; i <= 40; i++) {
            String softened = i % 4 == 0 ? "cleared" : "no-change";
            second.take(Tried.of(1000 + 2L * i, resin("alc_gel", "no-change", "v" + i)));
            first.take(Tried.of(1000 + 2L * i, resin("alc_gel", "no-change", "w" + i)));
            second.take(Tried.of(1001 + 2L * i, resin("oil_soften", softened, "v" + i)));
            first.take(Tried.of(1001 + 2L * i, resin("oil_soften", softened, "u" + i)));
        }
        assertThat(onResin(second)).isGreaterThan(onResin(first) + 0.05);
    }

    private static Attempt resin(String method, String outcome, String spot) {
        return Made.attempt("{contaminant: sap_conifer, age: PT1H, surface: clear_2k_sound, method: " + method + ", outcome: " + outcome
                + ", spot: " + spot + "}");
    }

    private static double onResin(Learned learned) {
        return learned.table().of(BASE.contaminants().get("sap_conifer"), BASE.methods().get("oil_soften"), SurfaceKind.PAINT).ifFresh();
    }

    private static double chance(Learned learned) {
        return learned.table().of(BASE.contaminants().get("tar_spot"), BASE.methods().get("aliph_tar"), SurfaceKind.PAINT).ifHardened();
    }

    @Test
    void partly_is_a_success_of_part_and_lies_between_all_and_nothing() {
        Learned all = new Learned(BASE);
        Learned some = new Learned(BASE);
        Learned none = new Learned(BASE);
        for (int i = 1; i <= 200; i++) {
            all.take(Tried.of(i, old("cleared", "")));
            some.take(Tried.of(i, old("partly", "")));
            none.take(Tried.of(i, old("no-change", "")));
        }
        assertThat(chance(some)).isCloseTo(0.5, within(0.03)).isLessThan(chance(all) - 0.3).isGreaterThan(chance(none) + 0.3);
        assertThat(some.lessons().moved()).anySatisfy(m -> assertThat(m.cleared()).isCloseTo(100, within(0.1)));
    }

    @Test
    void minutes_are_learned_as_a_median_drawn_to_what_is_stated() {
        double stated = BASE.minutesPerSpot(BASE.methods().get("aliph_tar"));
        for (int i = 0; i < 15; i++) {
            take(1, old("cleared", ", minutes: " + (i < 13 ? 2 * stated : 9 * stated)));
        }
        // fifteen of them against five
        assertThat(learned.table().pace(BASE.methods().get("aliph_tar"))).isCloseTo(Math.pow(2, 0.75), within(0.001));
        assertThat(learned.table().pace(BASE.methods().get("citrus_degreaser"))).isEqualTo(1);
        take(500, old("cleared", ", minutes: " + 60 * stated));
        assertThat(learned.lessons().minutes()).singleElement().satisfies(p -> {
            assertThat(p.tries()).as("hours written as minutes teach nothing").isEqualTo(15);
            assertThat(p.from()).isEqualTo(stated);
        });
    }

    @Test
    void counts_are_those_of_the_same_deposit_method_and_family_of_surfaces() {
        take(14, old("cleared", ""));
        take(6, old("partly", ""));
        var tar = BASE.contaminants().get("tar_spot");
        var method = BASE.methods().get("aliph_tar");
        assertThat(learned.table().count(tar, method, SurfaceKind.PAINT)).isEqualTo(new rungwise.ladder.ChanceTable.Count(20, 14));
        assertThat(learned.table().count(tar, method, SurfaceKind.GLASS)).isEqualTo(rungwise.ladder.ChanceTable.Count.NONE);
    }

    @Test
    void a_mark_that_shows_teaches_of_the_deposit_that_it_is_off() {
        Learned cleared = new Learned(BASE);
        for (int i = 1; i <= 10; i++) {
            cleared.take(Tried.of(i, old("cleared", "")));
        }
        take(10, old("marked", ""));
        assertThat(chance(learned)).isEqualTo(chance(cleared)).isGreaterThan(prior("aliph_tar"));
    }

    @Test
    void a_mark_that_still_shows_teaches_of_the_mark_that_nothing_changed() {
        Learned unchanged = new Learned(BASE);
        for (long i = 1; i <= 4; i++) {
            String polished = "{contaminant: etch_beneath, age: P3D, surface: clear_2k_sound, method: hand_polish_fine, outcome: ";
            learned.take(Tried.of(i, Made.attempt(polished + "marked}")));
            unchanged.take(Tried.of(i, Made.attempt(polished + "no-change}")));
        }
        assertThat(learned.lessons().moved()).isNotEmpty().isEqualTo(unchanged.lessons().moved());
    }

    @Test
    void an_empty_log_is_the_prior_and_a_method_nobody_tried_keeps_it() {
        assertThat(likely("aliph_tar", SurfaceKind.PAINT).learned()).isFalse();
        take(50, old("no-change", ""));
        assertThat(likely("citrus_degreaser", SurfaceKind.PAINT).learned()).isFalse();
    }

    @Test
    void glass_leans_on_what_paint_taught_until_it_has_tries_of_its_own() {
        take(2, old("no-change", ""));
        double paint = prior("aliph_tar") - likely("aliph_tar", SurfaceKind.PAINT).ifHardened();
        double glass = prior("aliph_tar") - likely("aliph_tar", SurfaceKind.GLASS).ifHardened();
        assertThat(glass).isPositive().isLessThanOrEqualTo(paint + 1e-9);
        // ten tries on glass that agree with the prior pull it back
        for (int i = 0; i < 10; i++) {
            take(1, Made.attempt("{contaminant: tar_spot, age: P3000D, surface: glass_tempered_side, method: aliph_tar, outcome: "
                    + (i < 9 ? "cleared" : "no-change") + "}"));
        }
        double pulled = prior("aliph_tar") - likely("aliph_tar", SurfaceKind.GLASS).ifHardened();
        assertThat(pulled).isLessThan(glass).isPositive();
    }

    @Test
    void a_try_counts_for_a_state_as_far_as_that_state_is_believed() {
        take(10, Made.attempt("{contaminant: tar_spot, surface: clear_2k_sound, method: aliph_tar, outcome: no-change}"));
        assertThat(likely("aliph_tar", SurfaceKind.PAINT).triesHardened()).isCloseTo(5, within(1e-9));
        assertThat(likely("aliph_tar", SurfaceKind.PAINT).triesFresh()).isCloseTo(5, within(1e-9));
    }

    @Test
    void a_failure_on_the_same_spot_moves_belief_before_the_next_try_counts() {
        Attempt first = Made.attempt("{contaminant: sap_conifer, surface: clear_2k_sound, method: panel_wipe_blend, spot: v1, "
                + "outcome: no-change}");
        var chances = BASE.contaminants().get("sap_conifer").chances(BASE.methods().get("panel_wipe_blend"));
        double f = chances.fresh().probability();
        double h = chances.hardened().probability();
        assertThat(f).as("else the try would say nothing of the state").isGreaterThan(h);
        take(2, first);
        double after = (1 - h) / ((1 - h) + (1 - f));
        Likely likely = learned.table().of(BASE.contaminants().get("sap_conifer"), BASE.methods().get("panel_wipe_blend"),
                SurfaceKind.PAINT);
        assertThat(likely.triesHardened()).isCloseTo(0.5 + after, within(1e-9));
    }

    @Test
    void a_try_on_an_unprepared_panel_teaches_nothing_but_its_harm_is_heard() {
        take(20, old("no-change", ", prepared: false"));
        take(1, old("harm", ", prepared: false"));
        assertThat(likely("aliph_tar", SurfaceKind.PAINT).learned()).isFalse();
        assertThat(learned.lessons().leftOut().unprepared()).isEqualTo(21);
        assertThat(learned.lessons().alarms()).singleElement().satisfies(a -> {
            assertThat(a.harms()).isEqualTo(1);
            assertThat(a.tries()).isEqualTo(21);
            assertThat(a.proposal().to()).isEqualTo(a.proposal().from() + 1);
        });
    }

    @Test
    void harm_never_raises_a_chance() {
        take(3, old("cleared", ""));
        double before = likely("aliph_tar", SurfaceKind.PAINT).ifHardened();
        take(1, old("harm", ""));
        assertThat(likely("aliph_tar", SurfaceKind.PAINT).ifHardened()).isLessThan(before);
    }

    @Test
    void what_is_not_known_any_more_is_counted_apart() {
        learned.take(new Tried(1, "x", "yard", java.util.Optional.empty(), "gone", List.of("clear_2k_sound"),
                java.util.OptionalDouble.empty(), java.util.OptionalDouble.empty(), "gone", Outcome.HARM, true, java.util.OptionalDouble.empty()));
        take(1, Made.attempt("{contaminant: tar_spot, method: aliph_tar, outcome: cleared}"));
        assertThat(learned.lessons().leftOut().unknown()).isEqualTo(2);
        assertThat(learned.lessons().moved()).isEmpty();
    }

    @Test
    void the_same_log_teaches_the_same_whether_read_at_once_or_bit_by_bit() {
        List<Tried> log = new ArrayList<>();
        java.util.Random random = new java.util.Random(5);
        for (int i = 0; i < 400; i++) {
            log.add(Tried.of(i + 1, Adversary.attempt(random)));
        }
        Learned other = new Learned(BASE);
        log.forEach(learned::take);
        log.forEach(t -> {
            other.take(t);
            other.table();
        });
        assertThat(other.lessons()).isEqualTo(learned.lessons());
        assertThat(other.lessons().moved()).isNotEmpty().allSatisfy(m ->
                assertThat(m.to()).isBetween(0.01, 0.98));
    }
}
