package rungwise.workup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.ladder.Standing;
import rungwise.rules.fact.Bay;
import rungwise.rules.use.Candidate;
import rungwise.rules.use.Fume;
import rungwise.text.Texts;

/** What fumes in a closed bay is met by its own cartridge, class by class: osha-respirator-factors, cartridge-colours and the limits of exposure.yaml. */
class FumesTest {
    private static final Bay CLOSED = new Bay(80, 0.5);

    private static List<Fume> closed(String method) {
        var known = Base.advisor().knowledge();
        var use = new Standing(known, Base.advisor().rules()).use(known.methods().get(method), known.surfaces().get("clear_2k_sound"));
        return new Fumes(known, new Gases(known)).of(CLOSED, List.of(new Candidate(use, true, true, 0, 0, 1)));
    }

    /** Maximum use is ten times the limit: 29 CFR 1910.134(d)(3)(i), half mask. */
    @Test
    void each_class_has_its_cartridge_and_its_most() {
        assertThat(closed("acid_mild")).singleElement().satisfies(f -> {
            assertThat(f.respirator().ppe()).isEqualTo("acid_gas_half_mask");
            // ten times the 10 ppm of California would be 100, but 50 ppm is dangerous at once
            assertThat(f.maximumPpm()).isEqualTo(50);
            assertThat(Texts.ENGLISH.of(f.figures())).contains("acid gas cartridges");
        });
        assertThat(closed("iron_neutral")).singleElement().satisfies(f -> {
            assertThat(f.respirator().ppe()).isEqualTo("mixed_half_mask");
            assertThat(f.maximumPpm()).isEqualTo(10);
        });
        assertThat(closed("ammonia_glass")).filteredOn(f -> f.what().id().equals("ammonia")).singleElement().satisfies(f -> {
            assertThat(f.respirator().ppe()).isEqualTo("ammonia_half_mask");
            assertThat(f.maximumPpm()).isEqualTo(250);
        });
        assertThat(closed("peroxide_3")).singleElement().satisfies(f -> {
            assertThat(f.respirator().isCartridge()).isFalse();
        });
    }

    @Test
    void what_is_limited_as_mist_alone_or_is_a_solvent_gives_no_fume() {
        assertThat(closed("oxalic_rust")).isEmpty();
        assertThat(closed("alc_70")).isEmpty();
    }

    @Test
    void a_closed_bay_asks_for_the_cartridge_and_an_aired_one_does_not() {
        String spot = "{contaminant: water_spot_mineral, age: P4D, surface: clear_2k_sound, done: [washed, dried], "
                + "setting: {airC: 18, panelC: 18, indoors: {volumeM3: 80, airChangesPerHour: %s}}}";
        Answer.Rung closed = rung(Base.ask(spot.formatted("0.5")), "acid_mild");
        assertThat(closed.ppe()).filteredOn(p -> p.item().equals("acid_gas_half_mask")).singleElement()
                .satisfies(p -> assertThat(p.because()).allMatch(b -> b.name().equals("fumes-with-cartridge") && b.allSources().contains("cartridge-colours")));
        assertThat(closed.risks()).anyMatch(r -> r.text().startsWith("Fumes of acetic acid") && r.text().contains("A particle mask stops no vapour"));
        Answer.Rung aired = rung(Base.ask(spot.formatted("6")), "acid_mild");
        assertThat(aired.ppe()).noneMatch(p -> p.item().equals("acid_gas_half_mask"));
    }

    @Test
    void until_the_place_is_told_the_cartridge_is_that_of_a_closed_bay_and_outdoors_there_is_none() {
        String spot = "{contaminant: water_spot_mineral, age: P4D, surface: clear_2k_sound, done: [washed, dried], "
                + "setting: {airC: 18, panelC: 18%s}}";
        Answer.Rung untold = rung(Base.ask(spot.formatted("")), "acid_mild");
        assertThat(untold.ppe()).filteredOn(p -> p.item().equals("acid_gas_half_mask")).singleElement().satisfies(p ->
                assertThat(p.because()).allMatch(b -> Base.found(b).contains("not told"))
                        .anyMatch(b -> b.name().equals("cartridge-until-bay-told") && b.allSources().contains("cartridge-colours")));
        assertThat(untold.risks()).noneMatch(r -> r.text().startsWith("Fumes of"));
        Answer.Rung outdoors = rung(Base.ask(spot.formatted(", outdoors: true")), "acid_mild");
        assertThat(outdoors.ppe()).noneMatch(p -> p.item().equals("acid_gas_half_mask"));
    }

    @Test
    void until_the_place_is_told_the_vapour_mask_is_that_of_a_closed_bay() {
        String spot = "{contaminant: tar_spot, age: P12D, surface: clear_2k_sound, setting: {airC: 20, panelC: 20, sun: shade%s}}";
        List<String> untold = rung(Base.ask(spot.formatted("")), "oil_soften").ppe().stream().map(Answer.Ppe::item).toList();
        List<String> closed = rung(Base.ask(spot.formatted(", indoors: {volumeM3: 60, airChangesPerHour: 0.5}")), "oil_soften")
                .ppe().stream().map(Answer.Ppe::item).toList();
        assertThat(closed).contains("vapour_full_mask", "forced_ventilation");
        assertThat(untold).containsAll(closed);
        assertThat(rung(Base.ask(spot.formatted(", outdoors: true")), "oil_soften").ppe()).extracting(Answer.Ppe::item)
                .doesNotContain("vapour_full_mask");
    }

    @Test
    void peroxide_in_a_closed_bay_waits_for_moving_air() {
        Answer answer = Base.ask("{contaminant: berry_stain, age: P2D, surface: int_fabric_woven, shelf: [peroxide_3, cloth], shelfStrict: true, "
                + "setting: {airC: 18, panelC: 18, indoors: {volumeM3: 80, airChangesPerHour: 0.5}}, wanted: [peroxide_3]}");
        assertThat(answer.rungs().stream().filter(r -> r.agent().filter(a -> a.id().equals("peroxide_3")).isPresent())
                .toList()).isNotEmpty().allMatch(r -> r.isMissing("ventilate")).allMatch(r -> r.risks().stream()
                .anyMatch(k -> k.text().contains("no cartridge is made for it")));
    }

    /** What nobody states the strength of, or no table the pressure of, is judged by its kind and says why. */
    @Test
    void where_data_do_not_permit_a_figure_the_reason_says_so() {
        assertThat(closed("iron_neutral")).allMatch(f -> Texts.ENGLISH.of(f.figures()).contains("how much of it the agent holds or sets free is not stated"));
        assertThat(closed("hcl_brightener")).allMatch(f -> Texts.ENGLISH.of(f.figures()).contains("no published figure here says how readily"));
        for (String worked : List.of("acid_mild", "peroxide_3")) {
            assertThat(closed(worked)).allMatch(f -> !Texts.ENGLISH.of(f.figures()).contains("cannot be worked out"));
        }
        assertThat(closed("ammonia_glass")).filteredOn(f -> f.what().id().equals("ammonia")).allMatch(f -> f.unknown().isEmpty());
    }

    @Test
    void no_hazard_of_an_agent_is_met_by_a_particle_mask() {
        Base.advisor().knowledge().methods().keySet().stream().flatMap(m -> closed(m).stream()).forEach(f -> {
            assertThat(f.respirator().against()).contains(f.what().hazard());
            assertThat(f.respirator().ppe()).isNotEqualTo("particle_mask");
            assertThat(f.maximumPpm()).isLessThanOrEqualTo(f.respirator().factor() * f.limitPpm());
        });
    }

    private static Answer.Rung rung(Answer answer, String method) {
        return answer.rungs().stream().filter(r -> r.method().equals(method)).findFirst()
                .orElseThrow(() -> new AssertionError(answer.rungs().stream().map(Answer.Rung::method).toList() + " "
                        + answer.passedOver()));
    }
}
