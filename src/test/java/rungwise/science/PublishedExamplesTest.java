package rungwise.science;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import rungwise.knowledge.load.Mappers;
import rungwise.science.Acidity.Solute;
import rungwise.science.PanelTemperature.Facing;
import tools.jackson.databind.JsonNode;

/** Every published worked example on these topics that was read, against the functions, each with its source. */
class PublishedExamplesTest {
    private static final Path FOLDER = Path.of("src/test/resources/science");
    private final Map<String, Consumer<JsonNode>> checks = new LinkedHashMap<>();

    PublishedExamplesTest() {
        for (String roof : List.of("sun-on-dark-flat-roof", "sun-on-light-flat-roof")) {
            checks.put(roof, e -> near(e, "celsius", PanelTemperature.solAir(given(e, "airC"), given(e, "irradianceWM2"),
                    given(e, "ratio"), given(e, "skyK"))));
        }
        // the same formula holds in °F, Btu/h ft² and h ft² °F/Btu
        checks.put("sun-on-wall-inch-pound", e -> near(e, "fahrenheit", PanelTemperature.solAir(given(e, "airF"),
                given(e, "irradianceBtu"), given(e, "ratio"), given(e, "skyK"))));
        checks.put("four-bonnets", e -> {
            near(e, "black", bonnet(e, 0.9));
            near(e, "dark_silver", bonnet(e, 0.7));
            near(e, "light_silver", bonnet(e, 0.5));
            near(e, "white", bonnet(e, 0.3));
        });
        checks.put("hottest-roof", e -> {
            near(e, "dark", bonnet(e, 0.9));
            near(e, "difference", bonnet(e, 0.9) - bonnet(e, 0.3));
        });
        checks.put("ppm-and-mass", e -> e.path("given").propertyNames()
                .forEach(name -> near(e, name, BayAir.mgM3(1, given(e, name)))));
        checks.put("room-table", e -> {
            for (int i = 0; i < e.at("/given/rows").size(); i++) {
                double changes = e.at("/given/rows/" + i + "/0").asDouble();
                double minutes = e.at("/given/rows/" + i + "/1").asDouble();
                // one unit an hour: a sixtieth of a gram a minute in mg
                double found = new BayAir.Room(1, changes, 1, 1 / 60.0).mgM3After(minutes) / 1000;
                assertThat(found).as("row " + i).isCloseTo(e.at("/expect/rows/" + i).asDouble(), within(e));
            }
        });
        checks.put("room-at-rest", e -> {
            BayAir.Room room = new BayAir.Room(given(e, "volumeM3"), 60 * given(e, "airM3Min") / given(e, "volumeM3"), 1,
                    given(e, "gMin"));
            assertThat(room.steadyMgM3() / 1000).isCloseTo(e.at("/expect/gM3").asDouble(), offset(0.001));
            near(e, "minutes", room.minutesToNinetyFivePercent());
        });
        checks.put("tenth-of-lower-limit", e -> e.path("given").propertyNames().forEach(name -> near(e, name,
                BayAir.ppmAtShareOfFlammable(given(e, name), 0.10))));
        checks.put("maximum-use", e -> e.path("given").propertyNames().forEach(name -> near(e, name,
                Breathing.maximumUse(e.at("/given/" + name + "/0").asDouble(), e.at("/given/" + name + "/1").asDouble(),
                        e.at("/given/" + name + "/2").asDouble()))));
        for (String heat : List.of("heat-90-70", "heat-damp", "heat-dry", "heat-mild")) {
            checks.put(heat, e -> near(e, "fahrenheit", HeatIndex.fahrenheit(given(e, "airF"), given(e, "percent"))));
        }
        checks.put("shift-mean", e -> near(e, "ppm", BayAir.overShift(row(e, "ppm"), row(e, "hours"))));
        checks.put("mixture-share", e -> near(e, "share", BayAir.shareOfLimits(row(e, "ppm"), row(e, "limits"))));
        for (String mix : List.of("hydrochloric-half-litre", "hydrochloric-quarter-litre")) {
            checks.put(mix, e -> near(e, "volume", Dilution.stockFor(given(e, "stock"), given(e, "wanted"),
                    given(e, "volume"))));
        }
        checks.put("washed-once-and-in-portions", e -> {
            for (int i = 0; i < 2; i++) {
                assertThat(Acidity.left(given(e, "carried"), e.at("/given/rinses/" + i + "/0").asDouble(),
                        e.at("/given/rinses/" + i + "/1").asInt())).isCloseTo(e.at("/expect/left/" + i).asDouble(), within(e));
            }
        });
        checks.put("alcohol-table", e -> {
            for (int i = 0; i < e.at("/given/rows").size(); i++) {
                double mass = e.at("/given/rows/" + i + "/0").asDouble();
                double density = e.at("/given/rows/" + i + "/1").asDouble();
                double volume = e.at("/expect/volume/" + i).asDouble();
                assertThat(Dilution.percentByVolume(mass, density)).isCloseTo(volume, within(e));
                assertThat(Dilution.percentByMass(volume, density)).isCloseTo(mass, within(e));
            }
        });
        checks.put("ethanoic-acid", e -> near(e, "acidity", Acidity.acidity(List.of(Solute.acid(given(e, "molar"), constants(e))))));
        checks.put("dihydrogen-phosphate", e -> near(e, "acidity", Acidity.acidity(List.of(Solute.salt(given(e, "molar"),
                constants(e), (int) given(e, "replaced"))))));
        checks.put("ammonia", e -> near(e, "acidity", Acidity.acidity(List.of(Solute.base(given(e, "molar"),
                14 + Math.log10(given(e, "baseConstant")))))));
    }

    @Test
    void every_published_example_comes_out_as_its_source_says() throws IOException {
        List<JsonNode> examples = new ArrayList<>();
        for (String file : List.of("air.yaml", "water.yaml")) {
            Mappers.yaml().readTree(Files.readString(FOLDER.resolve(file))).forEach(examples::add);
        }
        assertThat(examples.stream().map(e -> e.path("id").asString()).toList())
                .as("no example without a check, no check without an example").containsExactlyInAnyOrderElementsOf(checks.keySet());
        examples.forEach(e -> {
            assertThat(e.path("source").asString()).as(e.path("id").asString()).isNotBlank();
            checks.get(e.path("id").asString()).accept(e);
        });
        System.out.println("published examples of physics and safety checked: " + examples.size());
        examples.forEach(e -> System.out.println("  " + e.path("id").asString() + ": " + e.path("source").asString()));
    }

    private static double bonnet(JsonNode e, double absorption) {
        return PanelTemperature.celsius(given(e, "airC"), "direct", absorption, 0, Facing.HORIZONTAL);
    }

    private static double given(JsonNode e, String field) {
        assertThat(e.path("given").path(field).isNumber()).as(field).isTrue();
        return e.path("given").path(field).asDouble();
    }

    private static double[] row(JsonNode e, String field) {
        return StreamSupport.stream(e.path("given").path(field).spliterator(), false).mapToDouble(JsonNode::asDouble).toArray();
    }

    private static List<Double> constants(JsonNode e) {
        return java.util.Arrays.stream(row(e, "pKa")).boxed().toList();
    }

    private static org.assertj.core.data.Offset<Double> within(JsonNode e) {
        return offset(e.path("within").asDouble());
    }

    private static void near(JsonNode e, String field, double found) {
        assertThat(e.path("expect").path(field).isNumber()).as(field).isTrue();
        assertThat(found).as(e.path("id").asString() + " " + field)
                .isCloseTo(e.path("expect").path(field).asDouble(), within(e));
    }
}
