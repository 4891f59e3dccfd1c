package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwise.Base;
import rungwise.Without;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.surface.Surface;
import rungwise.rules.said.Step;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** No fact falls silent: whoever gives one reads that it counted, or why it did not; and what changes the answer counted. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FactUseTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    private int usedInAll;
    private int changedInAll;

    /** Questions that say much. */
    static List<String> rich() {
        return List.of("""
                {contaminant: sap_conifer, age: P21D, surface: clear_2k_sound, extent: {spots: 5, diameterMm: 6},
                facts: {totalFilmMicrons: {min: 104, max: 118}, clearMicrons: 44, colour: dark, paintAgeDays: 2500, vehicleYear: 2019,
                refinished: false, place: bonnet, priorDamage: [stone_chips, dents], warmestPanelC: 52, soiling: heavy, protection: none},
                setting: {airC: 31, sun: direct, windMs: 6, humidity: 0.4, outdoors: true, water: {hardnessMgL: 300, alkalinityMgL: 200}},
                workers: [{level: L2, sensitisedTo: [d_limonene, thiol]}], neighbours: [pmma_lens], done: [washed, dried],
                wanted: [alc_gel, clay_fine], canWaitMinutes: 90, passedTests: [alc_50], consent: {granted: [consent], refused: [g16]},
                mixing: {bottleMl: 1000, drawParts: 10}}""", """
                {contaminant: water_spot_mineral, age: P4D, surface: [clear_2k_sound, glass_laminated_screen], extent: {areaM2: 0.9, diameterMm: 3},
                facts: {colour: light, place: edge, protection: coating, soiling: light, vehicleYear: 1984, totalFilmMicrons: {min: 90, max: 95}},
                setting: {airC: 20, panelC: 19, sun: shade, indoors: {volumeM3: 120, airChangesPerHour: 2}},
                workers: [{level: L3}, {level: L1, sensitisedTo: [enzyme]}], shelf: [acid_mild, clay_fine, water], shelfStrict: true,
                tried: [{text: household bleach, outcome: no-change, hoursAgo: 3}, {method: contact_wash_neutral, substance: alk_pre_mild,
                text: twice, outcome: partly, times: 2, dwellMinutes: 3, hoursAgo: 5, prepared: true}]}""", """
                {contaminant: fallout_iron, age: P40D, surface: matte_satin_clear, extent: {areaM2: 1.4},
                facts: {colour: dark, vehicleYear: 2021, place: roof, warmestPanelC: 60}, setting: {airC: 17, panelC: 17, sun: shade},
                workers: [{level: L2}], wanted: [clay_fine, machine_finish], done: [washed, dried, masked, g15],
                tried: [{text: something from the shelf, outcome: no-change, hoursAgo: 1}, {method: iron_neutral, outcome: no-change,
                prepared: false, hoursAgo: 30, dwellMinutes: 4}]}""", """
                {contaminant: coffee_tea, age: PT1H, surface: int_fabric_woven, observations: [v15, v66, v21], facts: {place: seats,
                colour: medium, clearMicrons: 40, paintAgeDays: 20, refinished: true, priorDamage: [tear], soiling: heavy},
                setting: {airC: 36, humidity: 0.8, sun: overcast, windMs: 1, indoors: {volumeM3: 60, airChangesPerHour: 6}},
                workers: [{level: L4}], neighbours: [leather_coated], done: [vacuumed, blotted, made_safe], canWaitMinutes: 20}""", """
                {contaminant: tar_spot, age: P3D, surface: clear_2k_sound, circumstances: [gas_smell], extent: {spots: 12, diameterMm: 3},
                facts: {colour: light, place: door}, setting: {airC: 16, panelC: 16, sun: shade}, workers: [{level: L2}], done: [washed]}""",
                """
                {contaminant: chewing_gum, age: P2D, surface: trim_pp_tpo_textured, facts: {priorDamage: [crack], place: high_voltage},
                setting: {airC: 18, panelC: 18, sun: shade, outdoors: true}, tried: [{method: freeze_spot, outcome: harm, signs: [crack],
                hoursAgo: 1}]}""", """
                {contaminant: silica_scale_glass, age: P300D, surface: glass_tempered_side, observations: [v66, v15], facts: {place: glass,
                colour: dark, totalFilmMicrons: {min: 100, max: 110}, paintAgeDays: 900, protection: wax},
                setting: {airC: 24, sun: direct, windMs: 2, water: {hardnessMgL: 20}}, workers: [{level: L4}], consent: {granted: [g14],
                refused: [g13]}, wanted: [steel_blade_glass]}""", """
                {observations: [v21, v02], notSeen: [v59], age: P40D, surface: clear_2k_sound, facts: {place: sills, colour: dark},
                setting: {airC: 20, panelC: 20, sun: shade, outdoors: true}, done: [washed, dried]}""");
    }

    @ParameterizedTest
    @MethodSource("rich")
    void each_fact_counts_or_is_told_not_to(String yaml) {
        Question question = read(yaml);
        Answer answer = Base.advisor().answer(question, true);
        FactUse use = answer.facts();
        List<String> given = FactsGiven.of(question);
        List<String> told = new ArrayList<>(use.used());
        use.unused().forEach(u -> told.add(u.pointer()));
        assertThat(told).containsExactlyInAnyOrderElementsOf(given).doesNotHaveDuplicates();
        assertThat(use.unused()).allSatisfy(u -> assertThat(u.why()).endsWith("."));
        String whole = said(answer);
        List<String> changed = given.stream().filter(p -> !said(Base.advisor().answer(Without.fact(question, p), true)).equals(whole)).toList();
        usedInAll += use.used().size();
        changedInAll += changed.size();
        assertThat(changed).isNotEmpty();
        assertThat(use.used()).containsAll(changed);
    }

    @Test
    void every_field_of_a_question_is_told_when_it_is_given() {
        Set<String> fields = new TreeSet<>();
        rich().forEach(yaml -> FactsGiven.of(read(yaml)).forEach(p -> fields.add(FactsGiven.kind(p))));
        assertThat(fields).containsAll(FactUse.conditional()).hasSizeGreaterThan(40);
    }

    @Test
    void what_says_no_more_than_silence_is_not_given() {
        assertThat(FactsGiven.of(read("{age: unknown, surface: unknown, setting: {windMs: 0, outdoors: false}, "
                + "done: [], canWaitMinutes: 0}"))).isEmpty();
        assertThat(FactsGiven.of(read("{shelf: [], workers: [{}], tried: [{text: soap, outcome: harm}]}")))
                .containsExactlyInAnyOrder("/shelf", "/workers/0/level", "/tried/0/text", "/tried/0/outcome");
    }

    /** Used is no empty word: most of what is called so changes the answer at once. */
    @AfterAll
    void most_of_what_is_used_changes_the_answer() {
        System.out.println("facts called used: " + usedInAll + ", of which without them the answer is another: " + changedInAll);
        assertThat(changedInAll * 10).isGreaterThan(usedInAll * 5);
    }

    /** Why a fact of a question did not count; empty where it counted. */
    private static Optional<String> unused(String pointer, String yaml) {
        FactUse use = Base.ask(yaml).facts();
        Optional<String> why = use.unused().stream().filter(u -> u.pointer().equals(pointer)).map(FactUse.Unused::why).findFirst();
        assertThat(use.used().contains(pointer)).as(pointer).isNotEqualTo(why.isPresent());
        return why;
    }

    @Test
    void a_light_colour_counts_only_where_the_sun_warms_a_panel_that_nobody_measured() {
        String spot = "{contaminant: tar_spot, surface: clear_2k_sound, facts: {colour: light}, setting: {airC: 20, sun: direct%s}}";
        assertThat(unused("/facts/colour", spot.formatted(""))).isEmpty();
        assertThat(unused("/facts/colour", spot.formatted(", panelC: 24")))
                .contains("The panel was measured or stands in the shade, so its colour warms nothing.");
    }

    @Test
    void a_reading_of_the_clear_counts_on_paint_and_not_on_glass() {
        String spot = "{contaminant: tar_spot, surface: %s, facts: {clearMicrons: 44}}";
        assertThat(unused("/facts/clearMicrons", spot.formatted("clear_2k_sound"))).isEmpty();
        assertThat(unused("/facts/clearMicrons", spot.formatted("glass_tempered_side")))
                .contains("Nothing on this surface is counted in micrometres.");
    }

    @Test
    void a_place_counts_on_glass_as_that_has_two_sides() {
        String spot = "{contaminant: nicotine_film, surface: %s, facts: {place: rear}, setting: {panelC: 20}}";
        assertThat(unused("/facts/place", spot.formatted("glass_tempered_side"))).isEmpty();
        assertThat(unused("/facts/place", spot.formatted("clear_2k_sound"))).contains("The surface is named, and the place adds nothing to it.");
    }

    @Test
    void a_light_soiling_counts_where_a_reason_shows_it() {
        String spot = "{contaminant: %s, age: P1D, surface: trim_pp_tpo_textured, facts: {soiling: light}}";
        assertThat(unused("/facts/soiling", spot.formatted("pollen"))).isEmpty();
        assertThat(unused("/facts/soiling", spot.formatted("tar_spot"))).contains("Only a heavily soiled vehicle gets more steps.");
    }

    @Test
    void a_consent_counts_where_something_asks_for_it() {
        String spot = "{contaminant: tar_spot, surface: glass_tempered_side, consent: {refused: [%s]}}";
        assertThat(unused("/consent/refused/0", spot.formatted("g16"))).isEmpty();
        assertThat(unused("/consent/refused/0", spot.formatted("g17"))).contains("Nothing in this answer asks for it.");
    }

    @Test
    void beside_a_stop_only_what_makes_it_a_danger_counts() {
        String spot = "{contaminant: tar_spot, surface: clear_2k_sound, circumstances: [gas_smell], facts: {paintAgeDays: 20},"
                + " setting: {panelC: 20}, done: [washed]}";
        assertThat(unused("/circumstances/0", spot)).isEmpty();
        assertThat(unused("/contaminant", spot)).isEmpty();
        assertThat(unused("/facts/paintAgeDays", spot)).isEmpty();
        assertThat(unused("/setting/panelC", spot)).contains("Work stops before this could matter.");
        assertThat(unused("/done/0", spot)).contains("Work stops before this could matter.");
        assertThat(Base.ask(spot).assumed()).extracting(Answer.Assumed::fact).containsExactly("age");
    }

    private static Question read(String yaml) {
        return QuestionReader.read(Mappers.question().readTree(yaml), KNOWN);
    }

    /** All that it says but what it was asked, and what it says of the facts. */
    private static String said(Answer answer) {
        ObjectNode tree = Mappers.json().valueToTree(answer);
        tree.remove(List.of("question", "facts"));
        return tree.toString();
    }
}
