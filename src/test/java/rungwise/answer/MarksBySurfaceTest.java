package rungwise.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Attack;
import rungwise.knowledge.deposit.Contaminant;

/** How surely a mark is believed beneath a deposit, by surface, time and warmth. */
class MarksBySurfaceTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    private static double marked(String contaminant, String surface, String age, String facts) {
        return Base.ask("{contaminant: " + contaminant + ", surface: " + surface + ", age: " + age + ", facts: " + facts
                + ", setting: {airC: 20, panelC: 20, sun: shade, outdoors: true}, done: [washed, dried]}").ladder().orElseThrow().expected().alreadyMarked();
    }

    private static double marked(String contaminant, String surface, String age) {
        return marked(contaminant, surface, age, "{}");
    }

    @Test
    void insects_of_two_days_have_hardly_marked_glass_and_may_have_marked_paint() {
        assertThat(marked("insect_splatter", "glass_laminated_screen", "P2D")).isLessThan(0.05);
        assertThat(marked("insect_splatter", "clear_2k_sound", "P2D")).isBetween(0.3, 0.7);
        assertThat(marked("insect_splatter", "glass_laminated_screen", "unknown")).isLessThanOrEqualTo(0.05);
    }

    @Test
    void no_deposit_is_believed_to_mark_glass_more_surely_than_paint() {
        List<Contaminant> marking = KNOWN.contaminants().values().stream().filter(c -> !c.marks().isNever() && !c.isMark()).toList();
        assertThat(marking).hasSizeGreaterThan(30);
        marking.stream().filter(c -> c.holds().isEmpty() && c.emergency().isEmpty()).forEach(c -> {
            double paint = marked(c.id(), "clear_2k_sound", "P10D");
            double glass = marked(c.id(), "glass_tempered_side", "P10D");
            assertThat(glass).as(c.id()).isLessThanOrEqualTo(paint);
            if (c.marksBy().filter(by -> by == Attack.ACID || by == Attack.COLOUR).isPresent()) {
                assertThat(glass).as(c.id()).isLessThanOrEqualTo(0.05);
            }
        });
    }

    /** Source acid-insect-splatter: first marks of acid insects are told of after five or six hours, by others after one or two days. */
    @Test
    void acid_insects_begin_to_mark_within_hours_of_sun_and_mostly_have_within_two_days() {
        assertThat(marked("insect_swarm_acid", "clear_2k_sound", "PT5H", "{warmestPanelC: 50}")).isBetween(0.1, 0.5);
        assertThat(marked("insect_swarm_acid", "clear_2k_sound", "P2D", "{warmestPanelC: 50}")).isGreaterThan(0.8);
    }

    /** Sources droppings-degrade-clear and droppings-tests-in-news: in hot sun a dropping can mark within hours; on a cool panel it takes a day or more. */
    @Test
    void a_dropping_can_mark_within_hours_of_hot_sun_and_not_on_a_cool_panel() {
        assertThat(marked("bird_dropping", "clear_2k_sound", "PT5H", "{warmestPanelC: 60}")).isBetween(0.3, 0.8);
        assertThat(marked("bird_dropping", "clear_2k_sound", "PT5H", "{warmestPanelC: 20}")).isLessThan(0.05);
        assertThat(marked("bird_dropping", "clear_2k_sound", "P14D", "{warmestPanelC: 60}")).isGreaterThan(0.95);
    }

    @Test
    void soft_paint_marks_sooner_hard_and_coated_paint_later_and_matte_as_any() {
        double sound = marked("bird_dropping", "clear_2k_sound", "PT6H");
        assertThat(marked("bird_dropping", "clear_2k_soft", "PT6H")).isGreaterThan(sound);
        assertThat(marked("bird_dropping", "clear_2k_hard", "PT6H")).isLessThan(sound);
        assertThat(marked("bird_dropping", "ceramic_coated_paint", "PT6H")).isLessThan(sound);
        assertThat(marked("bird_dropping", "matte_satin_clear", "PT6H")).isEqualTo(sound);
        assertThat(marked("bird_dropping", "ppf_tpu_gloss", "P60D")).isLessThanOrEqualTo(0.6);
        assertThat(marked("bird_dropping", "chrome_plate_metal", "P60D")).isLessThanOrEqualTo(0.5);
    }

    @Test
    void of_two_surfaces_named_at_once_the_one_that_marks_sooner_counts() {
        assertThat(marked("bird_dropping", "[glass_tempered_side, clear_2k_soft]", "PT6H"))
                .isEqualTo(marked("bird_dropping", "clear_2k_soft", "PT6H"));
    }
}
