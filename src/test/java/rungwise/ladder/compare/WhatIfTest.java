package rungwise.ladder.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.Mappers;
import rungwise.ladder.Answer;
import rungwise.ladder.Question;
import rungwise.ladder.QuestionReader;

class WhatIfTest {
    private static Question question(String yaml) {
        return QuestionReader.read(Mappers.question().readTree(yaml), Base.advisor().knowledge());
    }

    private static List<WhatIf.Change> changes(String yaml) {
        Question question = question(yaml);
        return WhatIf.changes(question, Base.advisor().answer(question), Base.advisor()::answer);
    }

    @Test
    void a_hot_panel_would_change_the_next_step_and_a_cool_one_that_is_given_would_not() {
        List<WhatIf.Change> changes = changes("{contaminant: sap_conifer, age: P21D, surface: clear_2k_sound, "
                + "setting: {panelC: 20}, done: [washed, dried]}");
        assertThat(changes).anySatisfy(c -> {
            assertThat(c.fact()).isEqualTo("setting/panelC");
            assertThat(c.value()).isEqualTo("55.0");
            assertThat(c.unknown()).isFalse();
            assertThat(c.next().action()).isEqualTo("wait");
        });
        assertThat(changes).noneMatch(c -> c.fact().equals("setting/panelC") && c.value().equals("20.0"));
    }

    @Test
    void paint_of_two_weeks_would_change_it_and_is_marked_as_unknown() {
        assertThat(changes("{contaminant: tar_spot, age: P12D, surface: clear_2k_sound, setting: {panelC: 20}, "
                + "done: [washed, dried]}")).anySatisfy(c -> {
            assertThat(c.fact()).isEqualTo("facts/paintAgeDays");
            assertThat(c.unknown()).isTrue();
        });
    }

    @Test
    void every_change_that_is_told_is_one() {
        Answer now = Base.advisor().answer(question("{contaminant: tar_spot, surface: clear_2k_sound}"));
        List<WhatIf.Change> changes = changes("{contaminant: tar_spot, surface: clear_2k_sound}");
        assertThat(changes).hasSizeLessThanOrEqualTo(30).allSatisfy(c -> assertThat(c.next().action()
                + c.next().method()).isNotEqualTo(now.next().action() + now.next().method()));
    }

    @Test
    void a_hold_for_gas_changes_with_none_of_them() {
        assertThat(changes("{contaminant: tar_spot, surface: clear_2k_sound, circumstances: [gas_smell]}")).isEmpty();
    }
}
