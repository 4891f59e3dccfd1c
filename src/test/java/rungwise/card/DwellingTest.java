package rungwise.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How long it stays on is one reading, in plain words. */
class DwellingTest {
    private static Dwelling of(double from, double to, boolean dries, Integer spots) {
        return new Dwelling(from, to, dries, Optional.ofNullable(spots), false);
    }

    @Test
    void what_dries_before_its_dwell_is_over_is_given_no_longer() {
        assertThat(of(2, 77 / 60.0, true, null).words()).isEqualTo("Leave it about a minute at most: after that it may dry here.");
        assertThat(of(1, 4.4, true, 3).words()).isEqualTo("Leave it 1 to 4 min: after that it may dry here. 3 spots at a time at most.");
    }

    @Test
    void times_are_said_as_people_say_them() {
        assertThat(of(2, 5, false, null).words()).isEqualTo("Leave it 2 to 5 min.");
        assertThat(of(0, 1, false, 1).words()).isEqualTo("Leave it about a minute at most. One spot at a time.");
        assertThat(of(0.5, 2, false, null).words()).isEqualTo("Leave it half a minute to 2 min.");
        assertThat(of(60, 4320, false, null).words()).isEqualTo("Leave it 60 min to 3 days.");
        assertThat(of(0, 0, false, null).words()).isEmpty();
    }

    /** A longer time than it has is never said. */
    @Test
    void no_end_is_rounded_up() {
        assertThat(List.of(2.5, 2.99, 119.0, 1.9)).extracting(PlainTime::ofMinutes).containsExactly("2 min", "2 min", "an hour", "about a minute");
    }

    @Test
    void a_sign_that_comes_after_the_end_is_not_waited_for() {
        assertThat(of(1, 2, true, null).reaches("no colour after 3 min")).isFalse();
        assertThat(of(2, 5, false, null).reaches("no colour after 3 min")).isTrue();
        assertThat(of(1, 2, true, null).reaches("haze")).isTrue();
    }
}
