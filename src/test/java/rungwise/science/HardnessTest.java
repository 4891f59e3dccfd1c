package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Classes as the US Geological Survey draws them (water-hardness-classes), in mg/l as calcium carbonate. */
class HardnessTest {
    @Test
    void classes_end_where_the_survey_ends_them() {
        assertThat(Hardness.of(0)).isEqualTo(Hardness.SOFT);
        assertThat(Hardness.of(60)).isEqualTo(Hardness.SOFT);
        assertThat(Hardness.of(61)).isEqualTo(Hardness.MODERATE);
        assertThat(Hardness.of(120)).isEqualTo(Hardness.MODERATE);
        assertThat(Hardness.of(121)).isEqualTo(Hardness.HARD);
        assertThat(Hardness.of(180)).isEqualTo(Hardness.HARD);
        assertThat(Hardness.of(181)).isEqualTo(Hardness.VERY_HARD);
        assertThat(Hardness.MODERATE.isHard()).isFalse();
        assertThat(Hardness.HARD.isHard()).isTrue();
    }

    /** A mole of calcium carbonate, 100.09 g, takes up two of acid. */
    @Test
    void a_mole_of_lime_takes_up_two_of_acid() {
        assertThat(Hardness.alkalinityM(100_090)).isCloseTo(2, within(0.001));
        assertThat(Hardness.alkalinityM(0)).isZero();
    }

    @Test
    void what_clings_leaves_its_lime_and_less_than_nothing_is_refused() {
        assertThat(Hardness.leftMgM2(320, 0.05)).isCloseTo(16, within(1e-9));
        assertThatThrownBy(() -> Hardness.of(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Hardness.leftMgM2(10, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
