package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.words.EverydayProduct;

/** What a try brought to the spot: by id, in everyday words, or unknown. */
class TriedAgentsTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final TriedAgents TRIED = new TriedAgents(KNOWN);

    private static Question.Tried tried(String method, String substance, String text) {
        return new Question.Tried(Optional.ofNullable(method), Optional.ofNullable(substance), Optional.ofNullable(text), "no-change",
                1, 0, 1, Optional.empty(), List.of());
    }

    private static List<TriedAgents.Brought> text(String text) {
        return TRIED.of(tried(null, null, text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            household bleach                         | HYPOCHLORITE ALKALI
            Thick BLEACH from the kitchen            | HYPOCHLORITE ALKALI
            some ammonia                             | AMMONIA ALKALI
            vinegar on a cloth                       | ACID
            limescale remover                        | ACID
            oven cleaner, left for an hour           | ALKALI
            drain cleaner                            | ALKALI HYPOCHLORITE ACID
            nail-varnish remover                     | FLAMMABLE
            petrol                                   | FLAMMABLE
            brake cleaner                            | FLAMMABLE
            hydrogen peroxide                        | PEROXIDE
            oxygen bleach                            | PEROXIDE ALKALI
            dish soap                                | ANIONIC
            washing-up liquid                        | ANIONIC
            fallout remover                          | THIOL
            wheel cleaner                            | ACID ALKALI THIOL FLUORIDE
            bleach and then vinegar                  | HYPOCHLORITE ALKALI ACID
            baking soda                              | ''
            tap water                                | ''
            """)
    void everyday_words_are_read_as_what_is_in_them(String words, String groups) {
        List<TriedAgents.Brought> brought = text(words);
        Set<Reactive> wanted = Arrays.stream(groups.split(" ")).filter(g -> !g.isEmpty()).map(Reactive::valueOf)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(brought).isNotEmpty().allMatch(TriedAgents.Brought::told);
        Set<Reactive> found = new TreeSet<>();
        brought.forEach(b -> found.addAll(b.agent().reactive()));
        assertThat(found).isEqualTo(wanted);
    }

    @Test
    void words_that_hold_a_shorter_word_are_not_read_as_it() {
        assertThat(text("acetone free nail varnish remover").stream().map(b -> b.agent().id())).containsExactly("nail_varnish_remover");
        assertThat(text("petroleum jelly").stream().map(b -> b.agent().id())).containsExactly("cooking_oil");
        assertThat(text("tyre shine").stream().allMatch(TriedAgents.Brought::told)).isFalse();
    }

    @Test
    void what_nobody_can_tell_holds_everything_that_could_react() {
        for (String words : List.of("some stuff from a can", "Zauberreiniger", "a household cleaner", "something")) {
            assertThat(text(words)).as(words).singleElement().satisfies(b -> {
                assertThat(b.told()).isFalse();
                assertThat(b.agent().strongestSolvent()).isPositive();
                assertThat(b.agent().reactive()).contains(Reactive.ACID, Reactive.ALKALI, Reactive.THIOL, Reactive.HYPOCHLORITE,
                        Reactive.PEROXIDE, Reactive.AMMONIA, Reactive.QUAT, Reactive.FLAMMABLE, Reactive.ENZYME, Reactive.OILY);
            });
        }
    }

    @Test
    void method_and_substance_both_count_and_one_agent_counts_once() {
        assertThat(TRIED.of(tried("contact_wash_neutral", "hypochlorite_dilute", null)).stream().map(b -> b.agent().id()))
                .containsExactly("neutral_shampoo", "hypochlorite_dilute");
        assertThat(TRIED.of(tried("acid_mild", "acid_mild", null))).hasSize(1);
    }

    @Test
    void words_beside_a_method_add_what_they_name_and_nothing_else() {
        assertThat(TRIED.of(tried("contact_wash_neutral", null, "with a dash of bleach")).stream().map(b -> b.agent().id()))
                .containsExactly("neutral_shampoo", "bleach");
        assertThat(TRIED.of(tried("contact_wash_neutral", null, "twice, slowly"))).hasSize(1);
    }

    @Test
    void everyday_products_have_ids_of_their_own_and_all_can_be_met() {
        List<Agent> all = TriedAgents.everyday(KNOWN);
        assertThat(all).extracting(Agent::id).doesNotContainAnyElementsOf(KNOWN.agents().keySet())
                .contains(EverydayProduct.UNTOLD).doesNotHaveDuplicates();
        KNOWN.questionWords().everydayProducts().values().stream().filter(p -> !p.id().equals(EverydayProduct.UNTOLD)).forEach(p ->
                p.alsoCalled().forEach(words -> assertThat(text(words)).as(words).extracting(b -> b.agent().id()).containsExactly(p.id())));
    }
}
