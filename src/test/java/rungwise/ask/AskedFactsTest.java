package rungwise.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.words.AskedFact;
import rungwise.names.Names;
import rungwise.names.Vocabulary;

/** What stands in facts.yaml can be asked, said and understood. */
class AskedFactsTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Map<String, AskedFact> FACTS = KNOWN.questionWords().facts();

    private static Stream<String> said(AskedFact.Reply reply) {
        return Stream.concat(Stream.of(reply.says()), reply.alsoCalled().stream());
    }

    @Test
    void every_reply_makes_a_question_that_can_be_answered() {
        assertThat(FACTS).hasSizeGreaterThan(15);
        FACTS.values().forEach(fact -> fact.replies().forEach(reply -> assertThat(Told.nothing().with(fact.id(), Trials.gives(reply))
                .question(KNOWN)).as(fact.id() + " " + reply.id()).isNotNull()));
    }

    @Test
    void no_word_means_two_replies_and_no_list_is_longer_than_its_letters() {
        Set<SurfaceKind> any = EnumSet.allOf(SurfaceKind.class);
        FACTS.values().forEach(fact -> {
            assertThat(fact.on(any)).as(fact.id()).hasSizeLessThanOrEqualTo(26);
            Map<String, String> byForm = new HashMap<>();
            fact.replies().forEach(reply -> said(reply).map(KNOWN.questionWords().spoken().spoken()::form).distinct()
                    .forEach(form -> assertThat(byForm.put(form, reply.id())).as(fact.id() + ": " + form).isNull()));
        });
    }

    @Test
    void every_reply_is_understood_by_what_it_says() {
        FACTS.values().forEach(fact -> {
            Names names = new Vocabulary(KNOWN).replies(fact.replies());
            fact.replies().forEach(reply -> said(reply).forEach(word -> assertThat(names.id(word)).as(word).contains(reply.id())));
        });
    }

    /** A reply that no surface could get would never be heard. */
    @Test
    void every_fact_has_at_least_two_replies_on_each_kind_that_can_have_it() {
        FACTS.values().forEach(fact -> (fact.kinds().isEmpty() ? EnumSet.allOf(SurfaceKind.class) : fact.kinds()).stream()
                .filter(kind -> !fact.id().equals("place"))
                .forEach(kind -> assertThat(fact.on(Set.of(kind))).as(fact.id() + " on " + kind).isNotEmpty()));
    }

    @Test
    void every_gate_that_waits_for_a_fact_has_a_question() {
        assertThat(FACTS.values().stream().flatMap(f -> f.gate().stream()).collect(Collectors.toSet()))
                .isEqualTo(KNOWN.gates().values().stream().filter(Gate::asks).map(Gate::id).collect(Collectors.toSet()));
    }

    /** As it is understood whatever was asked, it must not be what somebody calls a surface. */
    @Test
    void danger_stops_all_work_and_its_words_name_no_surface() {
        Names surfaces = new Vocabulary(KNOWN).surfaces();
        List<AskedFact.Reply> danger = FACTS.values().stream().filter(AskedFact::anyTime).flatMap(f -> f.replies().stream())
                .filter(r -> !r.gives().isEmpty()).toList();
        assertThat(danger).hasSizeGreaterThan(10).allSatisfy(reply -> {
            assertThat(Base.advisor().answer(Told.nothing().with("danger", Trials.gives(reply)).with("deposit", "contaminant", List.of("tar_spot"))
                    .question(KNOWN)).hold()).as(reply.id()).isPresent();
            assertThat(Stream.concat(Stream.of(reply.id()), said(reply)).filter(w -> surfaces.id(w).isPresent() || !surfaces.mayBe(w).isEmpty())).isEmpty();
        });
    }
}
