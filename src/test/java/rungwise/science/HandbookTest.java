package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.tools.manipulator.MolecularFormulaManipulator;
import rungwise.knowledge.chemistry.Solute;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.safety.AirLimit;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;
import tools.jackson.databind.JsonNode;

/**
 * Handbook figures held against each other and against a chemistry toolkit; none that is recalled proves anything.
 */
class HandbookTest {
    private static final List<Substance> ALL = List.copyOf(Published.KNOWN.substances().values());

    private static boolean isRead(Substance s, String... fields) {
        return Stream.of(fields).allMatch(f -> s.basisOf(f) == Basis.PUBLISHED);
    }

    /** NIST, NFPA 497 and IEC 60079-20-1: above a liquid at its flash point the air holds about the lower limit. */
    @Test
    void saturated_vapour_at_the_flash_point_is_near_the_lower_flammable_limit() {
        List<Substance> listed = ALL.stream().filter(s -> s.antoine().isPresent() && s.flashC().isPresent()
                && s.lowerFlammablePercent().isPresent() && isRead(s, "flashC", "lowerFlammablePercent")).toList();
        assertThat(listed).hasSizeGreaterThanOrEqualTo(15).allSatisfy(s -> assertThat(
                s.antoine().orElseThrow().kpa(s.flashC().orElseThrow()) / rungwise.science.Units.ATMOSPHERE_KPA * 100
                        / s.lowerFlammablePercent().orElseThrow()).as(s.id()).isBetween(0.74, 1.68));
        System.out.println("flash points held against flammable limits: " + listed.size());
    }

    /** Constants of one handbook, boiling points of another (CRC). */
    @Test
    void constants_give_the_boiling_point_of_another_handbook_within_two_kelvin() {
        List<Substance> listed = ALL.stream().filter(s -> s.antoine().isPresent() && s.boilingC().isPresent()
                && isRead(s, "boilingC", "antoine")).toList();
        assertThat(listed).hasSizeGreaterThanOrEqualTo(25).allSatisfy(s -> assertThat(
                s.antoine().orElseThrow().boilingC()).as(s.id()).isCloseTo(s.boilingC().orElseThrow(),
                org.assertj.core.data.Offset.offset(2.0)));
        System.out.println("boiling points met by Antoine constants: " + listed.size());
    }

    /** General safety glossary and supplier tables (evaporation-rate-tables): who dries before whom, where they differ by a third or more. */
    @Test
    void the_listed_order_of_evaporation_is_kept() {
        List<Substance> listed = ALL.stream().filter(s -> s.evaporationRate().isPresent()
                && (s.antoine().isPresent() || !s.evaporatesAs().isEmpty()) && isRead(s, "evaporationRate"))
                .sorted(Comparator.comparingDouble(s -> s.evaporationRate().orElseThrow())).toList();
        assertThat(listed).hasSizeGreaterThanOrEqualTo(10);
        int pairs = 0;
        for (Substance slow : listed) {
            for (Substance fast : listed) {
                // a cut has a slow tail, and water waits for dry air: neither is one substance drying in dry air
                boolean odd = !slow.evaporatesAs().isEmpty() || !fast.evaporatesAs().isEmpty()
                        || slow.id().equals("water") || fast.id().equals("water");
                if (!odd && fast.evaporationRate().orElseThrow() > 1.35 * slow.evaporationRate().orElseThrow()) {
                    assertThat(Published.rate(fast.id(), 25)).as("%s before %s", fast.id(), slow.id())
                            .isGreaterThan(Published.rate(slow.id(), 25));
                    pairs++;
                }
            }
        }
        assertThat(pairs).isGreaterThan(20);
        System.out.println("pairs in the listed order of evaporation: " + pairs);
    }

    @Test
    void molar_masses_are_those_of_a_chemistry_toolkit() {
        List<Substance> listed = ALL.stream().filter(s -> !s.formula().isEmpty()).toList();
        assertThat(listed).hasSizeGreaterThanOrEqualTo(29).allSatisfy(s -> assertThat(MolecularFormulaManipulator.getMass(
                MolecularFormulaManipulator.getMolecularFormula(s.formula(), SilentChemObjectBuilder.getInstance()),
                MolecularFormulaManipulator.MolWeight)).as(s.id()).isCloseTo(s.molarMassGrams(),
                org.assertj.core.data.Offset.offset(0.02)));
        System.out.println("molar masses met by a chemistry toolkit: " + listed.size());
    }

    /** ρ = M/V, both from different tables: within 2 %. */
    @Test
    void molar_volume_times_density_is_the_molar_mass() {
        List<Substance> listed = ALL.stream().filter(s -> !s.formula().isEmpty()
                && isRead(s, "densityGramsPerCm3", "molarVolumeCm3")).toList();
        assertThat(listed).hasSizeGreaterThanOrEqualTo(15).allSatisfy(s -> assertThat(
                s.molarVolumeCm3() * s.densityGramsPerCm3() / s.molarMassGrams()).as(s.id()).isBetween(0.96, 1.04));
    }

    /** A library of units (JSR 385) knows pascal, kelvin, gram and second; the pound, foot and minute are exact. */
    @Test
    void conversions_are_those_of_a_units_library() {
        double kpa = Quantities.getQuantity(1, MetricPrefix.KILO(Units.PASCAL)).to(Units.PASCAL).getValue().doubleValue();
        assertThat(rungwise.science.Units.mmHgOfKpa(1)).isCloseTo(kpa / 133.322368, org.assertj.core.data.Offset.offset(1e-5));
        assertThat(rungwise.science.Units.kelvin(25)).isEqualTo(Quantities.getQuantity(25, Units.CELSIUS)
                .to(Units.KELVIN).getValue().doubleValue());
        double pound = Quantities.getQuantity(0.45359237, Units.KILOGRAM).to(Units.GRAM).getValue().doubleValue();
        double minute = Quantities.getQuantity(1, Units.MINUTE).to(Units.SECOND).getValue().doubleValue();
        double foot = 0.3048;
        // the flux of EPA 550-B-99-009 in its own units: 0.0035·U^0.78·M^(2/3)·P/T lb/min/ft²
        double si = 0.0035 * Math.pow(53.06, 2.0 / 3) * 108 / 298.15 * pound / minute / (foot * foot);
        assertThat(Evaporation.flux(1, 53.06, rungwise.science.Units.kpaOfMmHg(108), 25)).isCloseTo(si,
                org.assertj.core.data.Percentage.withPercentage(0.001));
    }

    /** Published advice that chemistry alone can decide. */
    @TestFactory
    Stream<DynamicTest> published_advice_on_solvents_and_materials() {
        return Published.in("compatibility.yaml").stream().map(row -> DynamicTest.dynamicTest(
                row.path("source").asString() + ": " + row.path("text").asString(), () -> {
                    assertThat(Published.KNOWN.sources()).containsKey(row.path("source").asString());
                    advice(row);
                }));
    }

    /** What everybody of the craft knows of a material. */
    @TestFactory
    Stream<DynamicTest> known_ways_of_materials_that_nothing_names() {
        return Published.in("materials.yaml").stream().map(row -> DynamicTest.dynamicTest(row.path("text").asString(),
                () -> advice(row)));
    }

    /** The strictest limit of a kind is the one that was published. */
    @TestFactory
    Stream<DynamicTest> limits_of_what_stands_in_no_bottle() {
        return Published.in("limits.yaml").stream().map(row -> DynamicTest.dynamicTest(row.path("exposure").asString(), () -> {
            List<AirLimit> set = Published.KNOWN.exposures().get(row.path("exposure").asString()).limits().stream()
                    .filter(l -> l.over().name().equalsIgnoreCase(row.path("over").asString())).toList();
            assertThat(set).allMatch(l -> l.unit().name().equalsIgnoreCase(row.path("unit").asString()))
                    .extracting(AirLimit::value).contains(row.path("value").asDouble())
                    .allMatch(v -> v >= row.path("value").asDouble());
            assertThat(set).anyMatch(l -> l.sources().contains(row.path("source").asString())
                    || row.path("source").asString().equals("recalled") && l.basis() == Basis.MEMORY);
        }));
    }

    private static void advice(JsonNode row) {
        Solute material = Published.KNOWN.solutes().get(row.path("material").asString());
        List<Sphere> read = material.spheres().stream().filter(s -> s.basis() == Basis.PUBLISHED)
                .map(Solute.Fit::sphere).toList();
        assertThat(read).isNotEmpty();
        row.path("substances").forEach(id -> {
            double low = Solubility.interval(Published.substance(id.asString()).hansen(), read).low();
            switch (row.path("says").asString()) {
                case "harms", "dissolves" -> assertThat(low).as(id.asString()).isLessThan(1);
                case "spares" -> assertThat(low).as(id.asString()).isGreaterThanOrEqualTo(1);
                default -> assertThat(low).as(id.asString()).isLessThan(1.3);
            }
        });
    }

    /** White spirit lies outside Redelius's sphere (RED 1.23) and yet takes tar off: it is slow, never hopeless. */
    @Test
    void white_spirit_on_bitumen_is_slow_and_not_hopeless() {
        double red = Solubility.red(Published.substance("white_spirit").hansen(), Published.spheres("bitumen").get(0));
        assertThat(red).isCloseTo(1.23, org.assertj.core.data.Offset.offset(0.005));
        assertThat(Solubility.band(red)).isEqualTo(Solubility.Band.SLOW);
    }

    /** Why water never blends: by volume it would make alcohol spare the acrylic that alcohol crazes. */
    @Test
    void water_blended_in_would_make_strong_alcohol_look_harmless() {
        Hansen ethanol = Published.substance("ethanol").hansen();
        Hansen mixed = Solubility.blend(List.of(new Solubility.Part(ethanol, 70),
                new Solubility.Part(Published.substance("water").hansen(), 30)));
        Sphere acrylic = Published.spheres("acrylic").get(0);
        assertThat(Solubility.band(Solubility.red(ethanol, acrylic))).isEqualTo(Solubility.Band.SLOW);
        assertThat(Solubility.band(Solubility.red(mixed, acrylic))).isEqualTo(Solubility.Band.PASSES);
    }
}
