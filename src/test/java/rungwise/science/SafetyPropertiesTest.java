package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import rungwise.science.Acidity.Solute;
import rungwise.science.Acidity.TapWater;
import rungwise.science.PanelTemperature.Facing;

/** What must hold for any input: which way things go, where they end, and that units cancel. */
class SafetyPropertiesTest {
    private static final List<Double> CITRIC = List.of(3.13, 4.76, 6.40);
    private static final TapWater TAP = new TapWater(0.003, 7.5);

    @Property(tries = 200, seed = "21")
    void more_sun_a_darker_colour_and_less_wind_only_warm_a_panel(@ForAll @DoubleRange(min = -20, max = 45) double air,
                                                                 @ForAll @DoubleRange(min = 0, max = 1) double colour,
                                                                 @ForAll @DoubleRange(min = 0, max = 20) double wind) {
        for (Facing facing : Facing.values()) {
            double direct = PanelTemperature.celsius(air, "direct", colour, wind, facing);
            assertThat(PanelTemperature.celsius(air, "direct", Math.min(1, colour + 0.1), wind, facing)).isGreaterThanOrEqualTo(direct);
            assertThat(PanelTemperature.celsius(air, "direct", colour, wind + 3, facing)).isLessThanOrEqualTo(direct);
            assertThat(PanelTemperature.celsius(air, "shade", colour, wind, facing)).isEqualTo(air);
            assertThat(direct).isLessThanOrEqualTo(PanelTemperature.celsius(air, "direct", 0.9, 0,
                    Facing.VERTICAL) + (colour > 0.9 ? 10 : 0));
        }
    }

    @Property(tries = 200, seed = "22")
    void the_reading_one_to_n_never_mixes_stronger_than_one_in_n(@ForAll @DoubleRange(min = 1, max = 200) double n) {
        assertThat(Dilution.oneToParts(n)).isLessThan(Dilution.oneInParts(n));
        assertThat(Dilution.oneToParts(n - 1)).isCloseTo(Dilution.oneInParts(n), offset(1e-12));
    }

    @Property(tries = 200, seed = "23")
    void a_lance_gives_the_panel_what_was_wanted(@ForAll @DoubleRange(min = 200, max = 2000) double bottle,
                                                 @ForAll @DoubleRange(min = 0, max = 40) double draw,
                                                 @ForAll @DoubleRange(min = 0, max = 1) double part) {
        double wanted = part / (1 + draw);
        Dilution.Mix mix = Dilution.lance(bottle, draw, wanted);
        assertThat(mix.concentrateMl() + mix.waterMl()).isCloseTo(bottle, offset(1e-9));
        assertThat(Dilution.onPanel(mix.concentrateMl() / bottle, draw)).isCloseTo(wanted, offset(1e-9));
    }

    @Test
    void a_lance_that_draws_too_little_says_so() {
        assertThatThrownBy(() -> Dilution.lance(1000, 10, 0.2)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cannot be thinned");
    }

    @Property(tries = 200, seed = "24")
    void a_wet_panel_only_weakens(@ForAll @DoubleRange(min = 0, max = 1) double share,
                                  @ForAll @DoubleRange(min = 1, max = 500) double laid,
                                  @ForAll @DoubleRange(min = 0, max = 500) double wet) {
        assertThat(Dilution.onWetPanel(share, laid, wet)).isBetween(0.0, share);
        assertThat(Dilution.onWetPanel(share, laid, 0)).isCloseTo(share, offset(1e-12));
    }

    @Property(tries = 200, seed = "25")
    void more_acid_never_raises_and_more_base_never_lowers_the_ph(@ForAll @DoubleRange(min = 0, max = 0.5) double acid,
                                                                  @ForAll @DoubleRange(min = 0, max = 0.5) double base,
                                                                  @ForAll @DoubleRange(min = 0, max = 0.2) double more) {
        List<Solute> mix = List.of(Solute.acid(acid, CITRIC), Solute.strongBase(base));
        double now = Acidity.acidity(mix);
        assertThat(Acidity.acidity(List.of(mix.get(0), mix.get(1), Solute.strongAcid(more)))).isLessThanOrEqualTo(now + 1e-9);
        assertThat(Acidity.acidity(List.of(mix.get(0), mix.get(1), Solute.strongBase(more)))).isGreaterThanOrEqualTo(now - 1e-9);
        assertThat(Acidity.acidity(List.of(mix.get(0), mix.get(1), Solute.base(more, 9.25)))).isGreaterThanOrEqualTo(now - 1e-9);
    }

    @Property(tries = 200, seed = "26")
    void the_charge_balance_agrees_with_closed_formulas_where_they_exist(@ForAll @DoubleRange(min = 1, max = 4) double tenth,
                                                                         @ForAll @DoubleRange(min = 3.5, max = 10) double pKa) {
        double molar = Math.pow(10, -tenth);
        assertThat(Acidity.acidity(List.of())).isCloseTo(7, offset(1e-9));
        assertThat(Acidity.acidity(List.of(Solute.strongBase(molar)))).isCloseTo(14 - tenth, offset(1e-3));
        assertThat(Acidity.acidity(List.of(Solute.strongAcid(molar)))).isCloseTo(tenth, offset(1e-3));
        assertThat(Acidity.acidity(List.of(Solute.acid(0.1, List.of(pKa)), Solute.salt(0.1, List.of(pKa), 1))))
                .isCloseTo(Acidity.buffer(pKa, 0.1, 0.1), offset(0.01));
    }

    @Property(tries = 100, seed = "27")
    void rinsing_only_brings_the_film_nearer_to_the_water(@ForAll @DoubleRange(min = 0.01, max = 0.5) double molar,
                                                          @ForAll @IntRange(min = 0, max = 6) int rinses) {
        List<Solute> acid = List.of(Solute.acid(molar, CITRIC));
        assertThat(Acidity.left(0.05, 2, rinses + 1)).isLessThan(Acidity.left(0.05, 2, rinses));
        double now = Acidity.afterRinses(acid, 0.05, 2, rinses, TAP);
        assertThat(Acidity.afterRinses(acid, 0.05, 2, rinses + 1, TAP)).isGreaterThanOrEqualTo(now - 1e-9);
        assertThat(Acidity.afterRinses(acid, 0.05, 2, 40, TAP)).isCloseTo(7.5, offset(0.01));
        int enough = Acidity.rinsesEnough(acid, 0.05, 2, TAP, 0.3, 20);
        assertThat(Acidity.afterRinses(acid, 0.05, 2, enough, TAP)).isCloseTo(7.5, offset(0.3));
        assertThat(enough).isPositive();
        assertThat(Math.abs(Acidity.afterRinses(acid, 0.05, 2, enough - 1, TAP) - 7.5)).isGreaterThan(0.3);
    }

    @Test
    void water_without_alkalinity_drifts_to_below_six_and_gives_up_a_rinse_it_cannot_reach() {
        assertThat(Acidity.afterRinses(List.of(Solute.acid(0.1, CITRIC)), 0.05, 2, 20, TapWater.UNBUFFERED)).isBetween(5.4, 6.0);
        assertThat(Acidity.rinsesEnough(List.of(Solute.strongAcid(5)), 1, 0.1, TAP, 0.1, 3)).isEqualTo(4);
    }

    @Property(tries = 200, seed = "28")
    void vapour_rises_to_its_steady_state_and_never_above(@ForAll @DoubleRange(min = 20, max = 2000) double volume,
                                                          @ForAll @DoubleRange(min = 0, max = 30) double changes,
                                                          @ForAll @DoubleRange(min = 0.1, max = 1) double mixing,
                                                          @ForAll @DoubleRange(min = 0, max = 20) double gMin,
                                                          @ForAll @DoubleRange(min = 0, max = 600) double minutes) {
        BayAir.Room room = new BayAir.Room(volume, changes, mixing, gMin);
        double now = room.mgM3After(minutes);
        assertThat(room.mgM3After(minutes + 10)).isGreaterThanOrEqualTo(now * (1 - 1e-9));
        assertThat(now).isLessThanOrEqualTo(room.steadyMgM3() * (1 + 1e-9));
        assertThat(new BayAir.Room(volume, changes + 1, mixing, gMin).mgM3After(minutes)).isLessThanOrEqualTo(now * (1 + 1e-9) + 1e-12);
        // units cancel: grams and minutes, however they are cut
        assertThat(new BayAir.Room(2 * volume, changes, mixing, 2 * gMin).mgM3After(minutes)).isCloseTo(now, offset(1e-9 + now * 1e-9));
        assertThat(BayAir.mgM3(BayAir.ppm(now, 60.1), 60.1)).isCloseTo(now, offset(1e-9 + now * 1e-12));
    }

    @Property(tries = 200, seed = "29")
    void the_airing_that_is_called_enough_is_enough_and_no_more(@ForAll @DoubleRange(min = 20, max = 500) double volume,
                                                                @ForAll @DoubleRange(min = 0.1, max = 20) double gMin,
                                                                @ForAll @DoubleRange(min = 5, max = 480) double minutes,
                                                                @ForAll @DoubleRange(min = 10, max = 3000) double allowed) {
        BayAir.Room still = new BayAir.Room(volume, 0, 0.3, gMin);
        double needed = BayAir.airChangesNeeded(still, allowed, minutes);
        assertThat(new BayAir.Room(volume, needed, 0.3, gMin).mgM3After(minutes)).isLessThanOrEqualTo(allowed * 1.0001);
        if (needed > 0.01) {
            assertThat(new BayAir.Room(volume, needed * 0.98, 0.3, gMin).mgM3After(minutes)).isGreaterThan(allowed * 0.9999);
        }
        assertThat(BayAir.airChangesNeeded(still, 0, minutes)).isInfinite();
    }

    @Property(tries = 200, seed = "30")
    void a_mixture_is_never_better_than_its_worst_part(@ForAll @DoubleRange(min = 0, max = 2000) double one,
                                                       @ForAll @DoubleRange(min = 0, max = 2000) double other) {
        double share = BayAir.shareOfLimits(new double[] {one, other}, new double[] {400, 85});
        assertThat(share).isGreaterThanOrEqualTo(Math.max(one / 400, other / 85));
    }

    @Property(tries = 200, seed = "31")
    void no_respirator_is_enough_at_what_is_immediately_dangerous(@ForAll @DoubleRange(min = 1, max = 10000) double factor,
                                                                  @ForAll @DoubleRange(min = 0.01, max = 500) double limit,
                                                                  @ForAll @DoubleRange(min = 1, max = 5000) double dangerous) {
        assertThat(Breathing.isEnough(factor, dangerous, limit, dangerous)).isFalse();
        assertThat(Breathing.maximumUse(factor, limit, dangerous)).isLessThanOrEqualTo(dangerous);
        assertThat(Breathing.maximumUse(factor, limit, Double.POSITIVE_INFINITY)).isEqualTo(factor * limit);
    }

    @Property(tries = 100, seed = "32")
    void another_chart_never_lengthens_what_a_glove_is_trusted_for(@ForAll @DoubleRange(min = 1, max = 480) double one,
                                                                   @ForAll @DoubleRange(min = 1, max = 480) double other) {
        assertThat(GloveTime.shortest(one, other)).isEqualTo(Math.min(one, other));
        assertThat(GloveTime.reliable(OptionalDouble.of(one), OptionalDouble.of(other), false, 100)).hasValue(Math.min(one, other));
        // ethanol, 58 cm³/mol: the sphere says nothing
        assertThat(GloveTime.reliable(OptionalDouble.of(one), OptionalDouble.of(other), true, 58.3)).hasValue(one);
        assertThat(GloveTime.reliable(OptionalDouble.empty(), OptionalDouble.of(other), true, 58.3)).isEmpty();
        assertThat(GloveTime.holds(one, one)).isFalse();
    }

    @Property(tries = 300, seed = "33")
    void more_heat_feels_hotter_and_more_damp_too_where_people_work(@ForAll @DoubleRange(min = 27, max = 44) double air,
                                                                    @ForAll @DoubleRange(min = 0.4, max = 0.8) double damp) {
        assertThat(HeatIndex.celsius(air + 0.5, damp)).isGreaterThan(HeatIndex.celsius(air, damp));
        assertThat(HeatIndex.celsius(air, damp + 0.05)).isGreaterThan(HeatIndex.celsius(air, damp));
    }

    @Property(tries = 200, seed = "34")
    void a_film_budget_never_grows_with_work_or_with_a_worse_gauge(@ForAll @DoubleRange(min = 0, max = 80) double clear,
                                                                   @ForAll @DoubleRange(min = 0, max = 10) double took) {
        assertThat(FilmBudget.ofReading(clear)).isLessThanOrEqualTo(FilmBudget.ofClear(clear)).isLessThanOrEqualTo(7.5);
        assertThat(FilmBudget.left(FilmBudget.ofReading(clear), took)).isBetween(0.0, FilmBudget.ofReading(clear));
        assertThat(FilmBudget.used(took, 1, 0.5)).isCloseTo(took + 1.5, offset(1e-12));
        assertThat(FilmBudget.leftForLife(clear, took, took)).isLessThanOrEqualTo(FilmBudget.leftForLife(clear, took));
    }
}
