package rungwise.workup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.question.Question;

/** Air, gloves, heat, film and mixing as they come out in an answer: each with a hit, a miss and what is missing. */
class SettingFiguresTest {
    private static Answer.Rung rung(String question, String method) {
        Answer answer = Base.ask(question);
        return java.util.stream.Stream.concat(answer.rungs().stream(), answer.alternatives().stream().map(Answer.Alternative::rung))
                .filter(r -> r.method().equals(method)).findFirst()
                .orElseThrow(() -> new AssertionError(method + " is not offered: " + answer.rungs().stream().map(Answer.Rung::method).toList()));
    }

    private static List<String> said(Answer.Rung rung, String... rules) {
        return Stream.of(rules).flatMap(rule -> rung.risks().stream().filter(r -> r.because().stream().anyMatch(b -> b.name().equals(rule))))
                .map(Answer.Risk::text).toList();
    }

    private static List<String> heat(String question) {
        return said(Base.ask(question).rungs().get(0), "warm-work", "hot-work", "dangerous-heat", "extreme-heat");
    }

    private static String glue(String rest) {
        return "{contaminant: adhesive_residue, age: P10D, surface: clear_2k_sound, shelf: [naphtha_light, alc_50, ester_solvent], "
                + "done: [washed, dried], consent: {granted: [consent, g16]}, " + rest + "}";
    }

    private static String bay(String extent, double volume, double changes) {
        return glue(extent + "setting: {airC: 20, panelC: 20, indoors: {volumeM3: " + volume + ", airChangesPerHour: " + changes + "}}");
    }

    /** 29 CFR 1910.1000(d) for the share, 29 CFR 1910.134(d)(3) for the mask. */
    @Test
    void naphtha_in_a_small_garage_names_air_changes_minutes_and_a_vapour_mask() {
        Answer.Rung rung = rung(bay("extent: {areaM2: 1.2}, ", 60, 1), "naphtha_light");
        assertThat(said(rung, "no-fan-airs-the-bay")).singleElement().asString().contains("extract at the spot", "min at");
        assertThat(said(rung, "fan-airs-the-bay")).isEmpty();
        assertThat(said(rung(bay("extent: {areaM2: 1.2}, ", 60, 1), "alc_50"), "fan-airs-the-bay")).singleElement().asString()
                .contains("air changes an hour while it lasts", "min at");
        assertThat(said(rung, "respirator-for-vapour")).singleElement().asString().contains("A particle mask stops no vapour", "half mask");
        assertThat(rung.ppe()).extracting(Answer.Ppe::item).contains("vapour_half_mask");
        assertThat(rung.gates()).anyMatch(g -> g.id().equals("more_air") && g.state().equals(Answer.GateState.MISSING));
        assertThat(rung.risks()).flatExtracting(Answer.Risk::because).filteredOn(b -> b.name().equals("no-fan-airs-the-bay"))
                .isNotEmpty().allSatisfy(b -> assertThat(b.allSources()).contains("osha-mixture-formula"));
    }

    @Test
    void on_a_few_spots_in_a_large_hall_no_mask_is_asked_for() {
        Answer.Rung rung = rung(bay("extent: {spots: 3}, ", 600, 6), "naphtha_light");
        assertThat(said(rung, "fan-airs-the-bay")).isEmpty();
        assertThat(said(rung, "respirator-for-vapour")).isEmpty();
        assertThat(rung.ppe()).extracting(Answer.Ppe::item).doesNotContain("vapour_half_mask");
        assertThat(rung.gates()).noneMatch(g -> g.id().equals("more_air"));
    }

    @Test
    void outdoors_nothing_is_worked_out_and_what_the_agent_demands_stays() {
        Answer.Rung rung = rung(glue("setting: {airC: 20, panelC: 20}"), "naphtha_light");
        assertThat(rung.risks()).flatExtracting(Answer.Risk::because).noneMatch(b -> Base.found(b).contains("near the hands"));
        assertThat(rung.ppe()).extracting(Answer.Ppe::item).contains("solvent_set");
    }

    @Property(tries = 40, seed = "41")
    void a_smaller_bay_less_air_or_an_unknown_extent_never_takes_a_gate_or_a_mask_away(@ForAll @IntRange(min = 30, max = 400) int volume,
                                                                                      @ForAll @IntRange(min = 1, max = 12) int changes,
                                                                                      @ForAll @IntRange(min = 1, max = 60) int spots) {
        boolean now = masked(bay("extent: {spots: " + spots + "}, ", volume, changes));
        net.jqwik.api.statistics.Statistics.collect(now);
        net.jqwik.api.statistics.Statistics.coverage(c -> c.check(true).percentage(share -> share >= 30));
        if (now) {
            assertThat(masked(bay("extent: {spots: " + spots + "}, ", volume * 0.7, changes))).isTrue();
            assertThat(masked(bay("extent: {spots: " + spots + "}, ", volume, changes - 1))).isTrue();
            assertThat(masked(bay("", volume, changes))).isTrue();
        }
    }

    /** Masked, or barred because it would near what burns. */
    private static boolean masked(String question) {
        Answer answer = Base.ask(question);
        return Base.bars(answer, "naphtha_light") || answer.rungs().stream().filter(r -> r.method().equals("naphtha_light"))
                .anyMatch(r -> r.ppe().stream().anyMatch(p -> p.item().startsWith("vapour_") || p.item().equals("supplied_air_mask"))
                        || r.gates().stream().anyMatch(g -> g.id().equals("more_air")));
    }

    @Test
    void an_unaired_box_bars_what_would_near_a_tenth_of_what_burns_and_asks_first_where_the_extent_is_unknown() {
        String box = "{contaminant: tar_spot, age: P12D, surface: clear_2k_sound, shelf: [aliph_tar], done: [washed, dried], "
                + "setting: {panelC: 20, indoors: {volumeM3: 30, airChangesPerHour: 0}}";
        Answer many = Base.ask(box + ", extent: {spots: 400}}");
        assertThat(many.barred()).filteredOn(b -> b.method().equals("aliph_tar")).singleElement()
                .satisfies(b -> assertThat(b.opensWith()).hasValue("ventilate"));
        assertThat(Base.bars(Base.ask(box + "}"), "aliph_tar")).isFalse();
        assertThat(rung(box + "}", "aliph_tar").gates()).anyMatch(g -> g.id().equals("more_air"));
    }

    /** Shortest chart counts: nitrile stands 10 min of ethyl acetate, so butyl is named for esters. */
    @Test
    void gloves_follow_the_agent_and_the_time() {
        // an ester is for aged resin, the others for glue
        assertThat(gloves(rung(glue("extent: {spots: 5}").replace("adhesive_residue", "sap_conifer"), "ester_solvent")))
                .singleElement().asString().contains("butyl");
        Answer.Rung sixty = rung(glue("extent: {spots: 60}"), "alc_50");
        assertThat(gloves(sixty)).singleElement().asString().contains("nitrile");
        assertThat(said(sixty, "thin-gloves-off-at-a-splash")).singleElement().asString().contains("hold 5 min");
        Answer.Rung one = rung(glue("extent: {spots: 1}"), "alc_50");
        assertThat(gloves(one)).singleElement().asString().contains("thin disposable");
        assertThat(said(one, "thin-gloves-off-at-a-splash")).isEmpty();
    }

    /** The glove of a rung, with its time where that is short. */
    private static List<String> gloves(Answer.Rung rung) {
        return said(rung, "gloves-named", "gloves-hold");
    }

    /** US National Weather Service SR 90-23; 34 °C at 60 % feels like 43 °C. */
    @Test
    void a_hot_day_rests_the_worker_and_a_mild_or_unknown_one_says_nothing() {
        String spot = "{contaminant: road_film, surface: clear_2k_sound, setting: {panelC: 24%s}}";
        assertThat(heat(spot.formatted(", airC: 34, humidity: 0.6"))).singleElement().asString().startsWith("Dangerous heat");
        assertThat(heat(spot.formatted(", airC: 34"))).as("no humidity: a muggy day").hasSize(1);
        assertThat(heat(spot.formatted(", airC: 20, humidity: 0.6"))).isEmpty();
        assertThat(heat(spot.formatted(""))).isEmpty();
        // at half humidity 26 °C feels like 26, 27 like 27.4, 31 like 33, 45 like 58
        assertThat(heat(spot.formatted(", airC: 26, humidity: 0.5"))).isEmpty();
        assertThat(heat(spot.formatted(", airC: 28, humidity: 0.5"))).singleElement().asString().startsWith("Warm work");
        assertThat(heat(spot.formatted(", airC: 31, humidity: 0.5"))).singleElement().asString().startsWith("Hot work");
        assertThat(heat(spot.formatted(", airC: 45, humidity: 0.5"))).singleElement().asString().startsWith("Extreme heat");
    }

    @Test
    void film_that_tries_took_counts_against_the_visit() {
        String etched = "{contaminant: water_spot_etched, age: P90D, surface: clear_2k_sound, done: [washed, dried], "
                + "facts: {totalFilmMicrons: {min: 120, max: 130}, paintAgeDays: 2000, refinished: false}, setting: {panelC: 20}%s}";
        assertThat(said(rung(etched.formatted(""), "machine_finish"), "film-it-takes")).singleElement().asString()
                .contains("0.7 µm", "3 µm");
        String tried = ", tried: [{method: machine_finish, outcome: no-change, times: 4, hoursAgo: %d}]";
        Answer after = Base.ask(etched.formatted(tried.formatted(2)));
        assertThat(after.barred()).filteredOn(b -> b.method().equals("machine_finish")).singleElement()
                .satisfies(b -> assertThat(b.because()).anyMatch(x -> x.name().equals("film-taken-before-counts")));
        assertThat(Base.ask(etched.formatted(tried.formatted(48))).barred()).filteredOn(b -> b.method().equals("machine_finish"))
                .noneMatch(b -> b.because().stream().anyMatch(x -> x.name().equals("film-taken-before-counts")));
    }

    @Test
    void a_bottle_gets_its_amounts_and_without_one_the_agent_keeps_its_own_words() {
        String spots = "{contaminant: water_spot_mineral, age: P4D, surface: clear_2k_sound, setting: {panelC: 18}, done: [washed, dried]%s}";
        assertThat(rung(spots.formatted(", mixing: {bottleMl: 1000}"), "acid_mild").agent().orElseThrow().mix())
                .isEqualTo("For 1000 ml: 20 to 50 g, water to the mark. Grams of the pure thing; of a solution as much more "
                        + "as it is weaker. Acid into water, never the reverse.");
        assertThat(rung(spots.formatted(""), "acid_mild").agent().orElseThrow().mix()).isEqualTo("Acid into water, never the reverse.");
        String film = "{contaminant: road_film, surface: clear_2k_sound, setting: {panelC: 18}, mixing: {bottleMl: 1000, drawParts: %s}}";
        assertThat(rung(film.formatted("9").replace("road_film", "road_salt"), "foam_neutral").agent().orElseThrow().mix()).startsWith("For 1000 ml: 20 to 50 ml");
        assertThat(rung(film.formatted("200"), "alk_pre_mild").agent().orElseThrow().mix()).contains("use a sprayer");
        assertThat(rung("{contaminant: insect_splatter, surface: clear_2k_sound, setting: {panelC: 18}, mixing: {bottleMl: 500}}",
                "citrus_degreaser").agent().orElseThrow().mix()).contains("24 to 83 ml", "1:n is one part to n of water");
    }

    @Test
    void every_dilution_with_figures_can_be_mixed() {
        Base.advisor().knowledge().agents().values().stream()
                .filter(a -> a.dilution().matches(".*\\d ?(%|:|g).*") && !a.dilution().startsWith("ready to use"))
                .forEach(a -> assertThat(Mixing.text(new rungwise.rules.use.Use(Base.advisor().knowledge().methods().get("neutral_rewash"),
                        a, rungwise.knowledge.method.Tool.NONE, Base.advisor().knowledge().surfaces().get("clear_2k_sound")),
                        java.util.Optional.of(new Question.Mixing(1000, null)))).as(a.dilution()).startsWith("For 1000 ml: "));
    }
}
