package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BeliefTest {
    @Property(tries = 300, seed = "11")
    void age_and_heat_only_move_belief_towards_hardened(@ForAll @DoubleRange(min = 0, max = 5000) double age,
                                                        @ForAll @DoubleRange(min = 0, max = 500) double more,
                                                        @ForAll @DoubleRange(min = -10, max = 80) double panelC,
                                                        @ForAll @DoubleRange(min = 0, max = 40) double hotter) {
        double now = Belief.byAge(age, Belief.hoursAt(48, 8, panelC)).hardened();
        assertThat(Belief.byAge(age + more, Belief.hoursAt(48, 8, panelC)).hardened()).isGreaterThanOrEqualTo(now);
        assertThat(Belief.byAge(age, Belief.hoursAt(48, 8, panelC + hotter)).hardened()).isGreaterThanOrEqualTo(now);
    }

    @Test
    void a_failed_try_that_works_better_on_fresh_deposits_makes_hardened_likelier() {
        assertThat(new Belief(0.5).afterFailure(0.92, 0.7).hardened()).isGreaterThan(0.5);
    }

    @Test
    void the_film_budget_is_the_smaller_of_a_quarter_and_the_makers_limit() {
        assertThat(FilmBudget.ofClear(20)).isEqualTo(5);
        assertThat(FilmBudget.ofClear(60)).isEqualTo(7.5);
    }
}
