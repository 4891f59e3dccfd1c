package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Gas over water. Constants: Sander 2023 (henry-constants-review) and the table of the US EPA's air quality model (henry-constants-air-model). */
class HenrysLawTest {
    private static final HenrysLaw AMMONIA = new HenrysLaw(0.59, 4200);

    /** One measurement of ammonia (Clegg and Brimblecombe 1989) stands as 61 mol/(l atm) in henry-constants-air-model and as 0.60 mol/(m³ Pa) in henry-constants-review. */
    @Test
    void one_measurement_printed_in_two_units_is_one_constant() {
        assertThat(HenrysLaw.ofMolPerLitreAtmosphere(61, 4200).molPerM3Pa()).isCloseTo(0.60, within(0.005));
    }

    /** Measured by others, as henry-constants-review lists them: Dasgupta and Dong 0.55, Clegg and Brimblecombe 0.60, Hales and Drewes 0.74. */
    @Test
    void ammonia_over_water_lies_among_what_was_measured() {
        List<Double> measured = List.of(0.55, 0.60, 0.74);
        double ppm = AMMONIA.ppm(0.1, 25);
        assertThat(measured.stream().mapToDouble(h -> new HenrysLaw(h, 4200).ppm(0.1, 25)).filter(p -> p > ppm).count()).isEqualTo(1);
        measured.forEach(h -> assertThat(new HenrysLaw(h, 4200).ppm(0.1, 25)).isCloseTo(ppm, Percentage.withPercentage(25)));
        // by hand: 100 mol/m³ ÷ 0.59 = 169.5 Pa, of 101 325 Pa
        assertThat(ppm).isCloseTo(1673, within(1.0));
    }

    /** Three reviews of hydrogen sulfide in henry-constants-review print 0.0010 with 2000 to 2200 K: at 10 °C they differ by under 4 %. */
    @Test
    void the_reviews_of_hydrogen_sulfide_agree_at_ten_degrees_too() {
        double middle = new HenrysLaw(0.0010, 2100).kpa(0.001, 10);
        assertThat(new HenrysLaw(0.0010, 2000).kpa(0.001, 10)).isCloseTo(middle, Percentage.withPercentage(4));
        assertThat(new HenrysLaw(0.0010, 2200).kpa(0.001, 10)).isCloseTo(middle, Percentage.withPercentage(4));
    }

    @Property
    void stronger_or_warmer_never_gives_off_less(@ForAll @DoubleRange(min = 0, max = 3) double molar,
                                                 @ForAll @DoubleRange(min = 0, max = 3) double more,
                                                 @ForAll @DoubleRange(min = 0, max = 40) double celsius,
                                                 @ForAll @DoubleRange(min = 0, max = 20) double warmer) {
        assertThat(AMMONIA.ppm(molar + more, celsius)).isGreaterThanOrEqualTo(AMMONIA.ppm(molar, celsius));
        assertThat(AMMONIA.ppm(molar, celsius + warmer)).isGreaterThanOrEqualTo(AMMONIA.ppm(molar, celsius));
        double left = AMMONIA.leaves(17, molar, 1, celsius, 0.3, 60);
        assertThat(left).isBetween(0.0, 1.0);
        assertThat(AMMONIA.leaves(17, molar, 1, celsius + warmer, 0.3, 60)).isGreaterThanOrEqualTo(left * 0.999999);
        assertThat(AMMONIA.leaves(17, molar, 1, celsius, 0.3, 120)).isGreaterThanOrEqualTo(left);
    }

    /** pH = pKa: half and half (Henderson and Hasselbalch). A strong acid is all ions; ammonia is free in alkali only. */
    @Test
    void what_is_there_as_ions_does_not_rise() {
        Acidity.Solute acetic = Acidity.Solute.acid(1, List.of(4.76));
        assertThat(acetic.uncharged(4.76)).isCloseTo(0.5, within(1e-9));
        assertThat(acetic.uncharged(1.8)).isGreaterThan(0.99);
        Acidity.Solute ammonia = Acidity.Solute.base(1, 9.25);
        assertThat(ammonia.uncharged(9.25)).isCloseTo(0.5, within(1e-9));
        assertThat(ammonia.uncharged(6)).isLessThan(0.001);
        assertThat(Acidity.Solute.strongAcid(1).uncharged(0)).isZero();
        assertThat(Acidity.Solute.acid(1, List.of(2.15, 7.2, 12.35)).uncharged(2.15)).isCloseTo(0.5, within(0.001));
    }

    @Test
    void nonsense_is_refused() {
        assertThatThrownBy(() -> new HenrysLaw(0, 4200)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new HenrysLaw(1, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> AMMONIA.kpa(-1, 20)).isInstanceOf(IllegalArgumentException.class);
    }
}
