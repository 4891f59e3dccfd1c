package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A mark comes on with time and warmth, and never more surely than a surface lets it. */
class MarkingPropertyTest {

    @Property
    void more_time_never_means_a_smaller_dose(@ForAll @DoubleRange(max = 5000) double age, @ForAll @DoubleRange(max = 500) double more,
                                              @ForAll @DoubleRange(max = 24) double sun, @ForAll @DoubleRange(min = 0.1, max = 2000) double cool,
                                              @ForAll @DoubleRange(min = 0.01, max = 1) double share, @ForAll @DoubleRange(min = -20, max = 90) double warmest) {
        assertThat(Marking.dose(age + more, sun, cool, cool * share, warmest))
                .isGreaterThanOrEqualTo(Marking.dose(age, sun, cool, cool * share, warmest) - 1e-9);
    }

    @Property
    void more_warmth_never_means_a_smaller_dose(@ForAll @DoubleRange(max = 5000) double age, @ForAll @DoubleRange(max = 24) double sun,
                                                @ForAll @DoubleRange(min = 0.1, max = 2000) double cool, @ForAll @DoubleRange(min = 0.01, max = 1) double share,
                                                @ForAll @DoubleRange(min = -20, max = 60) double warmest, @ForAll @DoubleRange(max = 40) double more) {
        assertThat(Marking.dose(age, sun, cool, cool * share, warmest + more))
                .isGreaterThanOrEqualTo(Marking.dose(age, sun, cool, cool * share, warmest) - 1e-9);
    }

    @Property
    void belief_rises_with_the_dose_and_stays_within_what_a_surface_lets(@ForAll @DoubleRange(max = 1000) double dose, @ForAll @DoubleRange(max = 1000) double more,
                                                                         @ForAll @DoubleRange(min = 0.1, max = 20) double times, @ForAll @DoubleRange(max = 1) double most) {
        double belief = Marking.belief(dose, times, most);
        assertThat(belief).isBetween(0.0, most);
        assertThat(Marking.belief(dose + more, times, most)).isGreaterThanOrEqualTo(belief);
        assertThat(Marking.belief(dose, times * 2, most)).isLessThanOrEqualTo(belief);
    }

    @Test
    void half_have_marked_when_the_stated_hours_are_over() {
        assertThat(Marking.belief(Marking.dose(48, 0, 48, 4, 60), 1, 1)).isCloseTo(0.5, within(1e-9));
        assertThat(Marking.belief(Marking.dose(4, 6, 48, 4, 60), 1, 1)).isCloseTo(0.5, within(1e-9));
    }

    /** By hand: a day with six warm hours of 24 and eighteen cool ones of 72. */
    @Test
    void warm_and_cool_hours_of_a_day_add_up() {
        assertThat(Marking.dose(24, 6, 72, 24, 45)).isCloseTo(6 / 24.0 + 18 / 72.0, within(1e-9));
        assertThat(Marking.dose(26, 6, 72, 24, 45)).isCloseTo(8 / 24.0 + 18 / 72.0, within(1e-9));
        assertThat(Marking.dose(24, 6, 72, 24, 20)).isCloseTo(24 / 72.0, within(1e-9));
    }

    @Test
    void what_never_marks_and_what_marks_at_once_are_told_apart() {
        assertThat(Marking.dose(1000, 6, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 60)).isZero();
        assertThat(Marking.belief(Marking.dose(1, 6, 0, 0, 60), 1, 0.9)).isEqualTo(0.9);
        assertThat(Marking.belief(Marking.dose(0, 6, 0, 0, 60), 1, 0.9)).isZero();
    }
}
