package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.rules.fact.Person;

/** Whoever reacts to something is kept from all that holds it, by whichever name it was told. */
class SensitisationTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    private static Set<String> keptFrom(String... words) {
        Person person = new Person(2, new Sensitisation(KNOWN).of(List.of(words)));
        return KNOWN.agents().values().stream().filter(person::reactsTo).map(a -> a.id()).collect(Collectors.toSet());
    }

    @ParameterizedTest
    @ValueSource(strings = {"d_limonene", "limonene", "d-Limonene", "5989-27-5", "orange oil", "terpene", "citrus", "terpenes"})
    void every_name_of_limonene_bars_all_that_holds_it(String word) {
        assertThat(keptFrom(word)).containsExactlyInAnyOrder("terpene_neat", "adhesive_citrus_gel", "citrus_degreaser");
    }

    @ParameterizedTest
    @ValueSource(strings = {"thiol", "thioglycolate", "thioglycolic acid", "ammonium_thioglycolate", "iron_neutral"})
    void every_name_of_the_iron_removers_bars_both(String word) {
        assertThat(keptFrom(word)).containsExactlyInAnyOrder("iron_neutral", "iron_gel_wheel");
    }

    @Test
    void a_substance_bars_every_agent_of_which_it_is_a_part_and_no_other() {
        assertThat(keptFrom("isopropanol")).contains("alc_15", "alc_70", "panel_wipe_blend", "coating_liquid", "glass_clean_neutral")
                .doesNotContain("wax", "aliph_tar", "neutral_shampoo");
        assertThat(keptFrom("white_spirit")).contains("aliph_tar", "wax").doesNotContain("terpene_neat", "alc_50");
    }

    @Test
    void an_agent_of_which_nobody_says_what_is_in_it_counts_as_its_family() {
        assertThat(KNOWN.agents().get("cement_softener").dissolved()).isEmpty();
        assertThat(keptFrom("citric_acid")).contains("acid_mild", "weak_acid", "cement_softener").doesNotContain("alk_pre_mild");
    }

    @Test
    void what_is_no_sensitiser_is_refused_with_the_nearest() {
        assertThatThrownBy(() -> QuestionReader.read(Mappers.question().readTree("{workers: [{sensitisedTo: [limonen, zz]}]}"), KNOWN))
                .hasMessageContaining("/workers/0/sensitisedTo/0: \"limonen\" is no sensitiser").hasMessageContaining("nearest are limonene")
                .hasMessageContaining("/workers/0/sensitisedTo/1");
    }

    @Test
    void every_listed_sensitiser_keeps_somebody_from_something() {
        KNOWN.questionWords().sensitisers().keySet().forEach(id -> assertThat(keptFrom(id)).as(id).isNotEmpty());
    }

    @Test
    void every_substance_of_a_listed_sensitiser_is_known() {
        KNOWN.questionWords().sensitisers().values().forEach(s -> s.substances().forEach(one -> assertThat(
                KNOWN.substances().containsKey(one) || KNOWN.exposures().containsKey(one)).as(s.id() + " " + one).isTrue()));
    }
}
