package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What must hold of solubility, evaporation and wet time whatever the figures. */
class ChemistryPropertyTest {
    private static final Antoine ACETATE = new Antoine(6.26803, 1440.231, 211.788, 59.7, 126.1);
    private static final Evaporation.Component REFERENCE = new Evaporation.Component(116.16, 0.8809, ACETATE, 1, false);
    private static final Evaporation.Component ALCOHOL = new Evaporation.Component(60.1, 0.7868,
            new Antoine(7.24268, 1580.92, 219.61, 8.1, 100.3), 1.7, false);
    private static final Evaporation.Component WATER = new Evaporation.Component(18.015, 0.9982,
            new Antoine(7.11564, 1687.537, 230.17, 0.1, 200.1), 0.3, true);

    @Provide
    Arbitrary<Hansen> hansen() {
        return Combinators.combine(Arbitraries.doubles().between(13, 25), Arbitraries.doubles().between(0, 27),
                Arbitraries.doubles().between(0, 43)).as(Hansen::new);
    }

    @Property
    void distance_is_the_same_both_ways_and_nothing_to_itself(@ForAll("hansen") Hansen a, @ForAll("hansen") Hansen b) {
        assertThat(Solubility.distance(a, b)).isEqualTo(Solubility.distance(b, a)).isNotNegative();
        assertThat(Solubility.distance(a, a)).isZero();
    }

    @Property
    void distance_by_a_third_is_never_shorter(@ForAll("hansen") Hansen a, @ForAll("hansen") Hansen b,
                                              @ForAll("hansen") Hansen c) {
        assertThat(Solubility.distance(a, c)).isLessThanOrEqualTo(Solubility.distance(a, b)
                + Solubility.distance(b, c) + 1e-9);
    }

    @Property
    void a_larger_sphere_never_raises_a_red(@ForAll("hansen") Hansen a, @ForAll("hansen") Hansen b,
                                            @ForAll @DoubleRange(min = 1, max = 20) double radius) {
        assertThat(Solubility.red(a, new Sphere(b, radius + 1))).isLessThanOrEqualTo(Solubility.red(a, new Sphere(b, radius)));
        assertThat(Solubility.red(b, new Sphere(b, radius))).isZero();
    }

    @Property
    void a_blend_lies_no_farther_than_its_farthest_part(@ForAll("hansen") Hansen a, @ForAll("hansen") Hansen b,
                                                        @ForAll("hansen") Hansen material,
                                                        @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        Hansen blend = Solubility.blend(List.of(new Solubility.Part(a, share), new Solubility.Part(b, 1 - share)));
        assertThat(Solubility.distance(blend, material)).isLessThanOrEqualTo(Math.max(
                Solubility.distance(a, material), Solubility.distance(b, material)) + 1e-9);
    }

    @Property
    void one_more_sphere_only_widens_the_interval(@ForAll("hansen") Hansen solvent, @ForAll("hansen") Hansen one,
                                                  @ForAll("hansen") Hansen two) {
        Solubility.Interval narrow = Solubility.interval(solvent, List.of(new Sphere(one, 8)));
        Solubility.Interval wide = Solubility.interval(solvent, List.of(new Sphere(one, 8), new Sphere(two, 6)));
        assertThat(wide.low()).isLessThanOrEqualTo(narrow.low());
        assertThat(wide.high()).isGreaterThanOrEqualTo(narrow.high());
    }

    @Example
    void bands_turn_at_their_limits() {
        assertThat(DoubleStream.of(0, 0.699, 0.7, 0.999, 1, 1.299, 1.3, 9).mapToObj(Solubility::band).toList())
                .containsExactly(Solubility.Band.DISSOLVES, Solubility.Band.DISSOLVES, Solubility.Band.SWELLS,
                        Solubility.Band.SWELLS, Solubility.Band.SLOW, Solubility.Band.SLOW, Solubility.Band.PASSES,
                        Solubility.Band.PASSES);
        assertThatThrownBy(() -> Solubility.band(-0.1)).hasMessageContaining("0 or more");
        assertThatThrownBy(() -> new Sphere(new Hansen(1, 1, 1), 0)).hasMessageContaining("radius");
        assertThatThrownBy(() -> Solubility.blend(List.of())).hasMessageContaining("blend");
    }

    @Property
    void warmth_never_lowers_a_vapour_pressure(@ForAll @DoubleRange(min = -10, max = 80) double celsius,
                                               @ForAll @DoubleRange(min = 0, max = 20) double more) {
        assertThat(ACETATE.kpa(celsius + more)).isGreaterThanOrEqualTo(ACETATE.kpa(celsius));
    }

    @Property
    void a_line_through_two_points_meets_both(@ForAll @DoubleRange(min = 0.01, max = 3) double kpa,
                                              @ForAll @DoubleRange(min = 60, max = 300) double boiling) {
        Antoine line = Antoine.through(20, kpa, boiling, Units.ATMOSPHERE_KPA);
        assertThat(line.kpa(20)).isCloseTo(kpa, offset(kpa * 1e-9));
        assertThat(line.boilingC()).isCloseTo(boiling, offset(1e-6));
    }

    @Property(tries = 200)
    void warmth_and_wind_never_keep_a_film_wet_longer(@ForAll @DoubleRange(min = 0, max = 60) double celsius,
                                                      @ForAll @DoubleRange(min = 0, max = 20) double warmer,
                                                      @ForAll @DoubleRange(min = 0.1, max = 5) double wind,
                                                      @ForAll @DoubleRange(min = 0, max = 5) double windier,
                                                      @ForAll @DoubleRange(min = 0, max = 0.9) double humidity,
                                                      @ForAll @DoubleRange(min = 0.1, max = 0.95) double share) {
        double calm = seconds(share, 0.02, new Evaporation.Air(celsius, wind, humidity));
        assertThat(seconds(share, 0.02, new Evaporation.Air(celsius + warmer, wind, humidity)))
                .isLessThanOrEqualTo(calm * 1.01);
        assertThat(seconds(share, 0.02, new Evaporation.Air(celsius, wind + windier, humidity)))
                .isLessThanOrEqualTo(calm * 1.01);
        assertThat(seconds(share, 0.02, new Evaporation.Air(celsius, wind, Math.min(0.98, humidity + 0.05))))
                .isGreaterThanOrEqualTo(calm * 0.99);
    }

    /** Spent within a step: counting the step whole once made moister air dry it sooner. */
    @Example
    void a_film_that_is_spent_within_a_step_does_not_count_the_whole_of_it() {
        double calm = seconds(0.81, 0.02, new Evaporation.Air(0, 0.1, 0.87));
        assertThat(seconds(0.81, 0.02, new Evaporation.Air(0, 0.1, 0.92))).isGreaterThanOrEqualTo(calm * 0.995);
    }

    private static double seconds(double share, double solids, Evaporation.Air air) {
        return WetTime.secondsPerMicron(List.of(new WetTime.Part(ALCOHOL, share), new WetTime.Part(WATER, 1 - share)),
                solids, air, REFERENCE);
    }

    @Property
    void a_pure_film_dries_in_its_mass_over_its_loss(@ForAll @DoubleRange(min = 5, max = 50) double celsius,
                                                     @ForAll @DoubleRange(min = 0.2, max = 5) double wind) {
        Evaporation.Air air = new Evaporation.Air(celsius, wind, 0);
        double exact = REFERENCE.gramsPerCm3() / Evaporation.loss(new Evaporation.Component(116.16, 0.8809, ACETATE, 0,
                false), 1, air, REFERENCE);
        assertThat(WetTime.secondsPerMicron(List.of(new WetTime.Part(REFERENCE, 1)), 0, air, REFERENCE))
                .isCloseTo(exact, offset(exact * 0.005));
    }

    @Example
    void what_is_mostly_solvent_is_spent_before_its_water_has_left() {
        Evaporation.Air moist = new Evaporation.Air(20, 1, 1);
        assertThat(seconds(0.7, 0, moist)).isLessThan(3600);
        assertThat(seconds(0.3, 0, moist)).isEqualTo(WetTime.FOR_GOOD_SECONDS);
    }

    @Example
    void more_solids_end_the_law_sooner_and_moist_air_never_dries_water() {
        Evaporation.Air air = new Evaporation.Air(20, 1, 0.4);
        assertThat(seconds(0.7, 0.2, air)).isLessThan(seconds(0.7, 0, air));
        assertThat(WetTime.secondsPerMicron(List.of(new WetTime.Part(WATER, 1)), 0, new Evaporation.Air(20, 1, 1),
                REFERENCE)).isEqualTo(WetTime.FOR_GOOD_SECONDS);
    }

    @Property
    void a_drained_film_thins_with_time_and_thickens_downward(@ForAll @DoubleRange(min = 0.5, max = 100) double viscosity,
                                                              @ForAll @DoubleRange(min = 0.01, max = 1) double below,
                                                              @ForAll @DoubleRange(min = 1, max = 600) double seconds) {
        double here = WetTime.drainedMicrons(viscosity, 0.8, below, seconds);
        assertThat(WetTime.drainedMicrons(viscosity, 0.8, below, seconds * 4)).isCloseTo(here / 2, offset(here * 1e-9));
        assertThat(WetTime.drainedMicrons(viscosity, 0.8, below * 4, seconds)).isCloseTo(here * 2, offset(here * 1e-9));
    }

    /** The closed form against small steps along Jeffreys's characteristic from the upper edge. */
    @Property(tries = 50)
    void draining_and_drying_at_once_agrees_with_small_steps(@ForAll @DoubleRange(min = 0.5, max = 10) double viscosity,
                                                             @ForAll @DoubleRange(min = 0.01, max = 0.5) double below,
                                                             @ForAll @DoubleRange(min = 0.01, max = 2) double loss) {
        double closed = WetTime.drainedDrySeconds(viscosity, 0.8, below, loss);
        double height = loss * 1e-6 * closed;
        double fallen = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double h = height * (1 - (i + 0.5) / steps);
            fallen += 800 * 9.80665 * h * h / (viscosity * 1e-3) * closed / steps;
        }
        assertThat(fallen).isCloseTo(below, offset(below * 1e-3));
    }

    @Property
    void a_gel_stays_wet_at_least_as_long_as_the_same_as_a_liquid(@ForAll @DoubleRange(min = 20, max = 2000) double applied,
                                                                  @ForAll @DoubleRange(min = 0.5, max = 20) double pace) {
        double liquid = WetTime.seconds(applied, 0, 1.5, 0.85, 0.05, pace);
        assertThat(WetTime.seconds(applied, 40, 1.5, 0.85, 0.05, pace)).isGreaterThanOrEqualTo(liquid);
        assertThat(WetTime.seconds(applied * 2, 40, 1.5, 0.85, 0.05, pace)).isGreaterThanOrEqualTo(
                WetTime.seconds(applied, 40, 1.5, 0.85, 0.05, pace));
    }

    @Property
    void what_is_wetted_at_once_can_be_wiped_before_the_first_dries(@ForAll @DoubleRange(min = 1, max = 3600) double wet,
                                                                    @ForAll @DoubleRange(min = 0, max = 600) double dwell,
                                                                    @ForAll @DoubleRange(min = 5, max = 300) double wipe) {
        double batch = WetTime.batch(wet, dwell, wipe);
        assertThat(batch).isNotNegative();
        assertThat(batch == 0 || dwell + batch * wipe <= wet + 1e-9).isTrue();
    }

    @Example
    void a_gel_slides_where_it_is_thicker_than_it_bears() {
        // 30 Pa over 1000 kg/m³ × 9.80665 m/s²
        assertThat(WetTime.heldMicrons(30, 1)).isCloseTo(3059.1, offset(0.1));
    }
}
