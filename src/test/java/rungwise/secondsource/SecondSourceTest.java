package rungwise.secondsource;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import tools.jackson.databind.JsonNode;

/** Limits, gloves, respirators, surfaces, hours and film as other sources have them; each difference has its reason. */
class SecondSourceTest {
    private static final KnowledgeBase BASE = Base.advisor().knowledge();

    @Test
    void what_can_hurt_is_as_another_source_has_it_or_the_difference_has_its_reason() {
        List<JsonNode> entries = Elsewhere.entries();
        Map<Elsewhere.Side, Long> sides = entries.stream().filter(e -> Elsewhere.held(BASE, e).isPresent())
                .collect(Collectors.groupingBy(e -> Elsewhere.side(e, Elsewhere.held(BASE, e).getAsDouble()), Collectors.counting()));
        System.out.println("second sources: " + entries.size() + " figures, " + entries.stream().filter(e -> e.path("basis").asString()
                .equals("read")).count() + " read and the others recalled with their table; " + sides.toString().toLowerCase(Locale.ROOT));
        entries.stream().filter(e -> e.path("differs").has("looser")).forEach(e -> System.out.println("  looser here: " + Elsewhere.name(e)
                + " " + e.path("differs").path("looser").asString() + ", " + e.path("source").asString() + " " + e.path("value").asString("")
                + e.path("to").asString("")));
        assertThat(Elsewhere.differences(BASE)).isEmpty();
    }

    /** A mistyped key would check nothing, and a source that the entry itself rests on would be no second one. */
    @Test
    void every_figure_names_its_source_and_place_and_whether_it_was_read() {
        Set<String> names = new HashSet<>();
        for (JsonNode entry : Elsewhere.entries()) {
            String name = Elsewhere.name(entry);
            assertThat(names.add(name)).as(name + " stands once").isTrue();
            assertThat(entry.propertyNames()).as(name).isSubsetOf("of", "figure", "value", "from", "to", "source", "place", "basis", "differs");
            assertThat(entry.has("value")).as(name).isNotEqualTo(entry.has("from") || entry.has("to"));
            assertThat(entry.path("source").asString()).as(name).isNotBlank();
            assertThat(entry.path("place").asString()).as(name).isNotBlank();
            assertThat(entry.path("basis").asString()).as(name).isIn("read", "memory");
            if (entry.has("differs")) {
                assertThat(entry.path("differs").propertyNames()).as(name).hasSize(2).contains("why").containsAnyOf("stricter", "looser");
                assertThat(entry.path("differs").path("why").asString()).as(name).isNotBlank();
            }
        }
    }

    static Stream<Arguments> changes() {
        return Stream.of(
                Arguments.of("2-butoxyethanol at 45 ppm", Changed.of("exposure.yaml", "glycol_ether_vapour", "limits",
                        l -> l.path("value").asInt() == 5, "value", v -> 45.0)),
                Arguments.of("nitrile against toluene for 400 minutes", Changed.of("gloves.yaml", "toluene", "charts",
                        c -> c.path("glove").asString().equals("nitrile"), "minutes", v -> 400.0)),
                Arguments.of("droppings that mark ten times later", Changed.of("contaminants/bird_dropping.yaml", "bird_dropping", "/marks/hot",
                        v -> v * 10)),
                Arguments.of("finishing by machine at a tenth of its film", Changed.of("methods/polish.yaml", "machine_finish",
                        "/severity/filmMicrons", v -> v / 10)),
                Arguments.of("medium polish at a tenth of its film", Changed.of("methods/polish.yaml", "machine_medium",
                        "/severity/filmMicrons", v -> v / 10)),
                Arguments.of("sanding at a tenth of its film", Changed.of("methods/sanding.yaml", "sand_p2000", "/severity/filmMicrons",
                        v -> v / 10)),
                Arguments.of("protection film that bears 90 °C", Changed.of("surfaces/ppf_tpu_gloss.yaml", "ppf_tpu_gloss", "/maxC", v -> 90.0)),
                Arguments.of("matte protection film that bears 90 °C", Changed.of("surfaces/ppf_tpu_matte.yaml", "ppf_tpu_matte", "/maxC",
                        v -> 90.0)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("changes")
    void a_changed_figure_that_no_case_noticed_once_is_noticed(String what, Changed changed) {
        Set<String> before = new TreeSet<>(Elsewhere.differences(BASE));
        List<String> after = Elsewhere.differences(changed.base());
        assertThat(after).as(what + ": " + changed).anyMatch(d -> d.startsWith(changed.entry() + " ") && !before.contains(d));
    }

    @Test
    void a_panel_that_burns_the_hand_is_noticed() {
        Changed hot = Changed.of("methods/clay.yaml", "clay_fine", "/window/to", v -> v + 30);
        assertThat(Elsewhere.differences(hot.base())).anyMatch(d -> d.startsWith("clay_fine may start on a panel of 60"));
    }

    @Test
    void a_reason_whose_difference_has_gone_is_noticed() {
        Changed agreeing = Changed.of("exposure.yaml", "glycol_ether_vapour", "limits", l -> l.path("value").asInt() == 5, "value", v -> 20.0);
        assertThat(Elsewhere.differences(agreeing.base())).anyMatch(d -> d.startsWith("glycol_ether_vapour ") && d.endsWith("no difference any more"));
    }
}
