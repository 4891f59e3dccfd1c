package rungwise.workup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;

/** What is seen where a method works follows how the deposit lies and on what. */
class SightTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    private static String seen(String method, String deposit, String surface) {
        return Sight.of(KNOWN, KNOWN.methods().get(method), KNOWN.contaminants().get(deposit), KNOWN.surfaces().get(surface), false);
    }

    @Test
    void of_a_film_the_cloth_comes_away_clean() {
        assertThat(seen("damp_microfibre", "screen_prints", "hard_plastic_int")).contains("cloth").contains("comes away clean");
    }

    @Test
    void of_specks_a_hand_in_a_bag_finds_none() {
        assertThat(seen("clay_fine", "overspray_2k", "clear_2k_sound")).contains("bag finds none");
    }

    @Test
    void a_lump_goes_soft_and_lifts_at_its_edge() {
        assertThat(seen("warm_compress", "bird_dropping", "clear_2k_sound")).isEqualTo("It goes soft and lifts at its edge.");
    }

    @Test
    void out_of_cloth_no_more_colour_comes() {
        assertThat(seen("blot_absorb", "coffee_tea", "int_fabric_woven")).isEqualTo("No more colour comes into the cloth.");
    }

    @Test
    void dust_in_a_pile_is_told_otherwise_than_on_a_hard_part() {
        assertThat(seen("vacuum_soft", "dust_loose", "carpet")).contains("pile").isNotEqualTo(seen("vacuum_soft", "dust_loose", "hard_plastic_int"));
    }

    @Test
    void a_reagent_shows_itself() {
        assertThat(seen("iron_neutral", "fallout_iron", "clear_2k_sound")).isEqualTo(KNOWN.mechanisms().get("chelate").see());
    }

    @Test
    void whatever_a_role_reaches_has_a_sign_of_its_own() {
        KNOWN.methods().values().stream().flatMap(m -> m.role().stream()).distinct().forEach(role -> {
            var reach = KNOWN.matter().reaches().get(role);
            Stream.of(reach.full(), reach.half(), reach.little()).flatMap(f -> f.stream()).forEach(form -> assertThat(reach.seen(form, false))
                    .as(role + " " + form.name().toLowerCase(Locale.ROOT)).isPresent());
        });
    }
}
