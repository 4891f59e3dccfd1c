package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;

/** Law 5: a dissolver that was left out before a failed clay is owed, and only until it was tried. */
class OwedDissolverTest {
    // on glass, where the next clay costs no film and is worth its minutes beside the iron remover
    private static final String SPOT = "contaminant: fallout_iron, age: P90D, surface: glass_laminated_screen, done: [washed, dried], "
            + "facts: {totalFilmMicrons: {min: 115, max: 125}}, shelf: [iron_neutral, clay_fine, clay_medium, machine_finish], "
            + "setting: {airC: 20, panelC: 20, sun: shade, outdoors: true}";

    private static Answer after(String tried) {
        return Base.ask("{" + SPOT + ", tried: [" + tried + "]}");
    }

    @Test
    void iron_remover_that_was_left_out_comes_before_anything_else() {
        assertThat(after("{method: clay_fine, outcome: no-change}").rungs()).extracting(Answer.Rung::method)
                .startsWith("iron_neutral").doesNotContain("clay_fine");
    }

    @Test
    void iron_remover_that_was_tried_never_comes_again_whichever_was_first() {
        assertThat(after("{method: clay_fine, outcome: no-change}, {method: iron_neutral, outcome: no-change}").rungs())
                .extracting(Answer.Rung::method).doesNotContain("iron_neutral", "clay_fine");
        assertThat(after("{method: iron_neutral, outcome: no-change}, {method: clay_fine, outcome: no-change}").rungs())
                .extracting(Answer.Rung::method).doesNotContain("iron_neutral", "clay_fine");
    }
}
