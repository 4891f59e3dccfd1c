package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class VanLaarTest {
    private static final Evaporation.Component ACETATE = new Evaporation.Component(116.16, 0.8809,
            Published.substance("n_butyl_acetate").antoine().orElseThrow(), 1, false);
    private static final Evaporation.Component WATER = component("water", Optional.empty());
    private static final Evaporation.Air AIR = new Evaporation.Air(25, 0.3, 0.5);

    private static Evaporation.Component component(String id, Optional<VanLaar> besideWater) {
        var s = Published.substance(id);
        return new Evaporation.Component(s.molarMassGrams(), s.densityGramsPerCm3(), s.antoine().orElseThrow(),
                s.evaporationRate().orElse(0.0), id.equals("water"), besideWater);
    }

    /** Gibbs and Duhem: x·dlnγ_s + (1 − x)·dlnγ_w = 0. */
    @Property(tries = 200, seed = "5")
    void both_coefficients_belong_together(@ForAll @DoubleRange(min = 0.5, max = 3) double a,
                                           @ForAll @DoubleRange(min = 0.5, max = 3) double b,
                                           @ForAll @DoubleRange(min = 0.05, max = 0.95) double x) {
        VanLaar law = new VanLaar(a, b);
        double h = 1e-5;
        double solvent = Math.log(law.ofSolvent(x + h, 1 - x - h) / law.ofSolvent(x - h, 1 - x + h));
        double water = Math.log(law.ofWater(x + h, 1 - x - h) / law.ofWater(x - h, 1 - x + h));
        assertThat((x * solvent + (1 - x) * water) / (2 * h)).isCloseTo(0, offset(1e-5));
        assertThat(law.ofSolvent(x, 1 - x)).isGreaterThanOrEqualTo(1).isLessThanOrEqualTo(Math.exp(a));
    }

    @Test
    void pure_it_is_ideal_and_without_constants_it_refuses() {
        assertThat(new VanLaar(2, 1).ofSolvent(1, 0)).isEqualTo(1);
        assertThat(new VanLaar(2, 1).ofWater(0, 1)).isEqualTo(1);
        assertThatThrownBy(() -> new VanLaar(0, 1)).hasMessageContaining("above 0");
    }

    @Test
    void dilute_alcohol_leaves_water_sooner_than_an_ideal_mixture_would() {
        VanLaar law = Published.substance("isopropanol").besideWater().orElseThrow();
        for (double share : new double[]{15, 50, 70}) {
            assertThat(left(Optional.of(law), share)).as("%s %%", share).isLessThan(left(Optional.empty(), share));
        }
        assertThat(left(Optional.of(law), 100)).isEqualTo(left(Optional.empty(), 100));
    }

    private static double left(Optional<VanLaar> law, double percent) {
        return WetTime.left(List.of(new WetTime.Part(component("isopropanol", law), percent),
                new WetTime.Part(WATER, 100 - percent)), AIR, ACETATE, 1)[0];
    }

    @Property(tries = 100, seed = "6")
    void what_is_left_only_falls(@ForAll @DoubleRange(min = 0, max = 20) double seconds,
                                 @ForAll @DoubleRange(min = 0, max = 20) double more) {
        List<WetTime.Part> parts = List.of(new WetTime.Part(component("isopropanol", Optional.empty()), 40),
                new WetTime.Part(ACETATE, 40), new WetTime.Part(WATER, 20));
        double[] sooner = WetTime.left(parts, AIR, ACETATE, seconds);
        double[] later = WetTime.left(parts, AIR, ACETATE, seconds + more);
        for (int i = 0; i < sooner.length; i++) {
            assertThat(later[i]).isBetween(0.0, 1.0).isLessThanOrEqualTo(sooner[i] + 1e-3);
        }
    }

    @Test
    void a_pure_liquid_is_gone_when_its_flux_says_so() {
        double seconds = ACETATE.gramsPerCm3() / Evaporation.loss(ACETATE, 1, AIR, ACETATE);
        assertThat(WetTime.left(List.of(new WetTime.Part(ACETATE, 1)), AIR, ACETATE, seconds / 2)[0])
                .isCloseTo(0.5, offset(1e-6));
    }
}
