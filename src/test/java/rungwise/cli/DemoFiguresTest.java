package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The program as it is run, on the yard's own spots: wet time, a product known by its sheet alone, the air of a bay. */
class DemoFiguresTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String SPOTS = "demo-data/spots/";

    @TempDir
    Path folder;

    private static String run(String... arguments) {
        StringWriter out = new StringWriter();
        assertThat(new CommandLine(new Main()).setOut(new PrintWriter(out)).execute(arguments)).as(String.join(" ", arguments)).isZero();
        return out.toString();
    }

    private static JsonNode json(String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(1, List.of("--json", "--no-learning"));
        return JSON.readTree(run(all.toArray(String[]::new)));
    }

    /** How long a method stays wet, as a rung or while it waits for the weather. */
    private static JsonNode wet(JsonNode answer, String method) {
        return Stream.of("rungs", "notNow").flatMap(part -> answer.path(part).valueStream())
                .filter(one -> one.path("method").asString().equals(method)).map(one -> one.path("staysWet"))
                .filter(JsonNode::isObject).findFirst().orElseThrow(() -> new AssertionError(method));
    }

    /** The film by EPA 550-B-99-009 and Jeffreys 1930, the panel by ASHRAE's sol-air temperature; no figure of it is published. */
    @Test
    void in_sun_and_wind_it_is_dry_sooner_less_is_wetted_at_once_and_the_panel_waits() {
        JsonNode sun = json("ladder", SPOTS + "resin-in-sun-and-wind.yaml");
        JsonNode shade = json("ladder", SPOTS + "resin-in-the-shade.yaml");
        for (String method : List.of("alc_70", "terpene_neat")) {
            JsonNode hot = wet(sun, method);
            JsonNode cool = wet(shade, method);
            assertThat(hot.path("basis").asString()).as(method).isEqualTo("computed");
            assertThat(hot.path("toSeconds").asDouble()).as(method).isLessThan(cool.path("fromSeconds").asDouble());
            assertThat(hot.at("/atOnce/areaM2").asDouble()).as(method).isLessThan(cool.at("/atOnce/areaM2").asDouble());
            assertThat(hot.at("/atOnce/spots").asInt()).as(method).isLessThanOrEqualTo(cool.at("/atOnce/spots").asInt());
            assertThat(hot.path("because").size()).as(method).isPositive();
        }
        assertThat(wet(sun, "terpene_neat").at("/atOnce/spots").asInt())
                .isLessThan(wet(shade, "terpene_neat").at("/atOnce/spots").asInt());
        assertThat(sun.at("/next/action").asString()).isEqualTo("wait");
        assertThat(steps(sun)).contains("shade", "cool");
        assertThat(steps(shade)).doesNotContain("shade", "cool");
        assertThat(shade.at("/next/action").asString()).isNotEqualTo("wait");
    }

    @Test
    void the_same_is_printed_for_a_person() {
        assertThat(run("ladder", "--no-learning", SPOTS + "tar-on-sound-clear.yaml")).containsPattern("\\d spots at a\\s+time at most");
        String sun = run("ladder", "--no-learning", "--all", SPOTS + "resin-in-sun-and-wind.yaml");
        assertThat(sun).startsWith("WAIT").contains("Let it cool below", "Wet for only ");
        // what is waited for says itself how short it would stay wet
        assertThat(run("ladder", "--no-learning", "--all", SPOTS + "hardened-resin-in-summer-sun.yaml")).startsWith("WAIT: Alcohol 50 %")
                .contains("Would stay wet now: ");
        assertThat(run("ladder", "--no-learning", "--why", "alc_50", SPOTS + "resin-in-sun-and-wind.yaml")).contains(": not now, until ",
                "soon dry");
    }

    private static JsonNode figure(JsonNode because, String name) {
        return because.path("figures").valueStream().filter(f -> f.path("name").asString().equals(name)).findFirst()
                .map(f -> f.path("value")).orElse(JSON.missingNode());
    }

    private static List<String> steps(JsonNode answer) {
        return answer.path("before").valueStream().map(s -> s.path("step").asString()).toList();
    }

    /** RED by Hansen's handbook; that white spirit lies near acrylic is entry 403, of attack on the finished material. */
    @Test
    void a_product_known_by_its_sheet_alone_gets_a_chance_by_what_the_glue_is_made_of_and_a_computed_caution_on_acrylic() throws IOException {
        Path spot = Files.writeString(folder.resolve("lens.yaml"), Files.readString(Path.of(SPOTS + "adhesive-on-acrylic-lens.yaml"))
                .replace("wanted: [alc_70]", "wanted: [bench_alcohol]") + "shelf: [label_cleaner, bench_alcohol, cloth]\nshelfStrict: true\n");
        JsonNode answer = json("ladder", spot.toString(), "--overlay", "demo-data/products");
        JsonNode rung = answer.path("rungs").valueStream().filter(r -> r.path("method").asString().equals("label_cleaner")).findFirst().orElseThrow();
        assertThat(rung.at("/chance/basis").asString()).isEqualTo("prior");
        assertThat(figure(rung.at("/because/0"), "ofDeposit").asString()).contains("sticker glue");
        assertThat(rung.path("risks").valueStream().filter(r -> figure(r.at("/because/0"), "material").asString("").equals("Acrylic glass")).toList())
                .singleElement().satisfies(r -> {
                    assertThat(r.path("text").asString()).contains("crack stressed plastic");
                    assertThat(figure(r.at("/because/0"), "red").asDouble()).isCloseTo(1.07, within(0.005));
                });
        assertThat(wet(answer, "label_cleaner").path("basis").asString()).isEqualTo("computed");
        // acrylic crazes under alcohol: aviation-acrylic-solvents
        assertThat(answer.path("never").valueStream().map(b -> b.path("method").asString())).contains("bench_alcohol");
    }

    /** Limits: niosh-pocket-guide, ontario-limits and as each substance says; additive rule: 29 CFR 1910.1000(d); factor: 29 CFR 1910.134. */
    @Test
    void a_closed_bay_gets_a_ventilation_figure_and_a_respirator_class() throws IOException {
        JsonNode answer = json("ladder", SPOTS + "tar-in-a-closed-bay.yaml");
        JsonNode terpene = answer.path("rungs").valueStream().filter(r -> r.path("method").asString().equals("terpene_neat")).findFirst().orElseThrow();
        assertThat(terpene.path("ppe").valueStream().map(p -> p.path("item").asString())).contains("vapour_half_mask");
        assertThat(terpene.path("risks").valueStream().map(r -> r.path("text").asString()))
                .anyMatch(t -> t.matches("The bay needs \\d+ air changes an hour while it lasts\\..*"))
                .anyMatch(t -> t.matches(".*half mask with vapour cartridges\\. A particle mask stops no vapour\\."));
        Path wiped = Files.writeString(folder.resolve("wiped.yaml"), Files.readString(Path.of(SPOTS + "tar-in-a-closed-bay.yaml"))
                .replace("contaminant: tar_spot", "contaminant: silicone_sling") + "shelf: [panel_wipe_blend]\n");
        JsonNode blend = json("ladder", wiped.toString()).path("rungs").valueStream().filter(r -> r.path("method").asString().equals("panel_wipe_blend")).findFirst().orElseThrow();
        assertThat(blend.path("risks").toString()).as("by its substances").contains("light naphtha", "isopropanol", "nearHands", "\"limit\":200", "shareOfLimit");
    }
}
