package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

/** Every published example of solubility and evaporation, each with its source; afterwards it prints how many. */
class PublishedChemistryTest {
    private static final Map<String, List<String>> CHECKED = new TreeMap<>();
    private static int figures;

    private static final Map<String, Function<JsonNode, Map<String, Double>>> FORMULAS = new TreeMap<>(Map.of(
            "red", e -> {
                Hansen solvent = Published.hansen(e.path("given").path("solvent"));
                Hansen material = Published.hansen(e.path("given").path("material"));
                return Map.of("distance", Solubility.distance(solvent, material), "red",
                        Solubility.red(solvent, new Sphere(material, e.path("given").path("radius").asDouble())));
            },
            "blend", e -> {
                double share = e.path("given").path("share").asDouble();
                Hansen blend = Solubility.blend(List.of(
                        new Solubility.Part(Published.hansen(e.path("given").path("one")), share),
                        new Solubility.Part(Published.hansen(e.path("given").path("other")), 1 - share)));
                return Map.of("dispersion", blend.dispersion(), "polar", blend.polar(), "hydrogen", blend.hydrogen());
            },
            "redOfSubstance", e -> each(e, id -> Solubility.red(Published.substance(id).hansen(),
                    Published.spheres(e.path("given").path("material").asString())
                            .get(e.path("given").path("fit").asInt()))),
            "boiling", e -> each(e, id -> Published.substance(id).antoine().orElseThrow().boilingC()),
            "vapourPressure", e -> each(e, id -> Published.kpa(id, e.path("given").path("celsius").asDouble())),
            "ppm", e -> Map.of("milligramsPerCubicMetre",
                    Units.milligramsPerCubicMetre(1, e.path("given").path("gramsPerMol").asDouble())),
            "water", e -> Map.of("kgPerSecond", Evaporation.waterKgPerHour(e.path("given").path("windMs").asDouble(),
                    e.path("given").path("areaM2").asDouble(), e.path("given").path("saturated").asDouble(),
                    e.path("given").path("present").asDouble()) / 3600),
            "evaporationRate", e -> each(e, id -> Published.rate(id, e.path("given").path("celsius").asDouble())),
            "evaporationRateNotSlower", e -> each(e, id -> Published.rate(id,
                    e.path("given").path("celsius").asDouble()))));

    static {
        FORMULAS.put("azeotrope", e -> each(e, id -> azeotrope(id, e.path("given").path(id).asDouble())));
        FORMULAS.put("azeotropePressure", e -> each(e, id -> {
            double celsius = e.path("given").path(id).asDouble();
            double share = azeotrope(id, celsius);
            return share * pressure(id, share, celsius) + (1 - share) * waterPressure(id, share, celsius);
        }));
    }

    /** Mole fraction at which vapour and liquid are the same: both want out alike. */
    private static double azeotrope(String id, double celsius) {
        double low = 0.01;
        double high = 0.99;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (pressure(id, middle, celsius) > waterPressure(id, middle, celsius)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double pressure(String id, double share, double celsius) {
        return Published.substance(id).besideWater().orElseThrow().ofSolvent(share, 1 - share) * Published.kpa(id, celsius);
    }

    private static double waterPressure(String id, double share, double celsius) {
        return Published.substance(id).besideWater().orElseThrow().ofWater(share, 1 - share) * Published.kpa("water", celsius);
    }

    private static Map<String, Double> each(JsonNode example, Function<String, Double> figure) {
        Map<String, Double> figures = new TreeMap<>();
        example.path("expected").propertyNames().forEach(id -> figures.put(id, figure.apply(id)));
        return figures;
    }

    @TestFactory
    Stream<DynamicTest> an_example_comes_out_as_printed() {
        return Published.in("published.yaml").stream().map(e -> DynamicTest.dynamicTest(e.path("id").asString(), () -> {
            Map<String, Double> found = FORMULAS.get(e.path("formula").asString()).apply(e);
            assertThat(e.path("source").asString()).isNotBlank();
            assertThat(e.path("expected").propertyNames()).isNotEmpty();
            e.path("expected").properties().forEach(want -> {
                double figure = found.get(want.getKey());
                double within = e.path("within").path(want.getKey()).asDouble(e.path("within").path("any").asDouble(0));
                assertThat(within).isPositive();
                if (e.path("formula").asString().endsWith("NotSlower")) {
                    assertThat(figure / want.getValue().asDouble()).as(want.getKey()).isBetween(1.0, within);
                } else {
                    assertThat(Math.abs(figure - want.getValue().asDouble())).as("%s: %s", want.getKey(), figure)
                            .isLessThanOrEqualTo(within);
                }
                figures++;
            });
            CHECKED.computeIfAbsent(e.path("source").asString(), s -> new ArrayList<>()).add(e.path("id").asString());
        }));
    }

    @AfterAll
    static void print() {
        System.out.println("published examples checked: "
                + CHECKED.values().stream().mapToInt(List::size).sum() + " with " + figures + " figures");
        CHECKED.forEach((source, ids) -> System.out.println("  " + ids.size() + " from " + source));
    }
}
