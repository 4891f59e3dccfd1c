package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.surface.Place;
import rungwise.knowledge.surface.Trait;
import rungwise.knowledge.words.QuestionWords;
import rungwise.rules.said.Step;
import rungwise.science.PanelTemperature.Facing;

/** What may be said in a field of closed words, and that each word is read by something. */
class ClosedListsTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final QuestionWords WORDS = KNOWN.questionWords();

    private static Question read(String yaml) {
        return QuestionReader.read(Mappers.question().readTree(yaml), KNOWN);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {done: [foo]}                               | /done/0: "foo" is not one of the words here; nearest are
            {done: [wahsed]}                            | nearest are washed
            {done: [ask_film]}                          | /done/0: "ask_film" is a question, and no work answers it; Measure the paint
            {facts: {place: trunk of a tree}}           | /facts/place: "trunk of a tree" is not one of the words here; nearest are boot
            {facts: {priorDamage: [x]}}                 | /facts/priorDamage/0: "x" is not one of the words here; nearest are
            {facts: {protection: glaze}}                | /facts/protection: "glaze" is not one of the words here
            {facts: {soiling: medium}}                  | /facts/soiling: "medium" is not one of the words here; use
            {facts: {colour: purple}}                   | /facts/colour: "purple" is not one of the words here; use
            {setting: {sun: bright}}                    | /setting/sun: "bright"
            {workers: [{level: L9}]}                    | /workers/0/level: "L9" is not one of the words here; nearest are L1, L2, L3; the words are L1, L2, L3, L4
            {workers: [{level: X}]}                     | /workers/0/level: "X"
            {tried: [{text: soap, outcome: fine}]}      | /tried/0/outcome: "fine"
            {tried: [{method: alc_gel, outcome: harm, signs: [odd]}]} | /tried/0/signs/0: "odd" is not one of the words here
            {circumstances: [gas_smel]}                 | /circumstances/0: "gas_smel" is not one of the words here; nearest are gas_smell
            {consent: {granted: [ask_film]}}            | /consent/granted/0: "ask_film" is nothing that somebody agrees to
            {consent: {granted: [mask]}}                | "mask" is nothing that somebody agrees to; say under done
            {tried: [{text: ' ', outcome: harm}]}       | /tried/0/text: it says nothing
            """)
    void a_word_that_nobody_reads_is_refused_with_the_nearest(String question, String said) {
        assertThatThrownBy(() -> read(question)).isInstanceOf(BadQuestion.class).hasMessageContaining(said);
    }

    @Test
    void a_word_may_be_said_another_way() {
        Question q = read("""
                {done: [Washed, taped off], circumstances: [Smell of gas], facts: {place: Hood, priorDamage: [stone chips, DENT], protection: ceramic, soiling: filthy,
                colour: black}, setting: {sun: in the shade}, tried: [{method: alc_gel, outcome: no change, signs: [dye-bleed]}]}""");
        assertThat(q.done()).containsExactly("washed", "masked");
        assertThat(q.circumstances()).containsExactly("gas_smell");
        assertThat(q.facts().place()).contains("bonnet");
        assertThat(q.facts().priorDamage()).containsExactly("stone_chips", "dents");
        assertThat(q.facts().protection()).contains("coating");
        assertThat(q.facts().soiling()).contains("heavy");
        assertThat(q.facts().colour()).contains("dark");
        assertThat(q.setting().sun()).contains("shade");
        assertThat(q.tried().get(0).outcome()).isEqualTo("no-change");
        assertThat(q.tried().get(0).signs()).containsExactly("colour_on_cloth");
    }

    @Test
    void every_problem_is_told_at_once() {
        assertThatThrownBy(() -> read("{contaminant: tarr, done: [foo], facts: {colour: x, clearMicrons: thin}}"))
                .hasMessageContaining("/done/0").hasMessageContaining("/facts/colour").hasMessageContaining("/facts/clearMicrons");
    }

    @Test
    void gates_that_are_work_or_an_agreement_may_be_done() {
        assertThat(read("{done: [mask, g15, washed]}").done()).containsExactly("mask", "g15", "washed");
    }

    @Test
    void one_word_means_one_thing() {
        for (String field : new ClosedLists(KNOWN).fields()) {
            assertThat(new ClosedLists(KNOWN).words(field)).as(field).doesNotHaveDuplicates().isNotEmpty();
        }
        assertThat(labels(WORDS.done().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.places().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.priorDamage().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.protections().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.soiling().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.colours().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.sun().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.outcomes().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.stopSigns().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.everydayProducts().values())).doesNotHaveDuplicates();
        assertThat(labels(WORDS.sensitisers().values())).doesNotHaveDuplicates();
        assertThat(labels(KNOWN.productWords().functions().values())).doesNotHaveDuplicates();
        assertThat(labels(KNOWN.productWords().parts().values())).doesNotHaveDuplicates();
    }

    private static List<String> labels(java.util.Collection<? extends rungwise.knowledge.common.Listed> words) {
        return words.stream().flatMap(w -> java.util.stream.Stream.concat(java.util.stream.Stream.of(w.id(), w.name()),
                w.alsoCalled().stream()).map(WordList::plain).distinct()).toList();
    }

    /** Words that a step, a gate or a method waits for, and no others. */
    @Test
    void the_words_for_done_are_those_that_are_read() {
        Set<String> readBy = new TreeSet<>();
        KNOWN.methods().values().forEach(m -> m.doneBy().ifPresent(readBy::add));
        KNOWN.gates().values().forEach(g -> g.opens().done().ifPresent(readBy::add));
        Set<String> ofSteps = ConcurrentHashMap.newKeySet();
        Advisor heard = new Advisor(KNOWN, Base.advisor().rules().heardBy(said -> said.of(Step.class)
                .forEach(s -> ofSteps.add(s.conclusion().done()))));
        KNOWN.contaminants().values().stream().filter(c -> c.holds().isEmpty()).forEach(c -> heard.answer(read("{contaminant: " + c.id()
                + ", age: PT1H, surface: " + c.usualSurfaces().get(0) + ", setting: {airC: 36, panelC: 50, sun: direct}}")));
        // fresh on a cool panel too, as on a hot one little is chosen that a step could come before
        List.of("PT1H", "P9D").forEach(age -> KNOWN.contaminants().values().stream().filter(c -> c.holds().isEmpty())
                .forEach(c -> heard.answer(read("{contaminant: " + c.id() + ", age: " + age + ", surface: " + c.usualSurfaces().get(0)
                        + ", setting: {airC: 20, panelC: 20, sun: shade}}"))));
        // once a mark shows, the light comes first
        heard.answer(read("{contaminant: bird_dropping, age: P3D, surface: clear_2k_sound, tried: [{method: warm_compress, outcome: marked}]}"));
        ofSteps.remove("");
        readBy.addAll(ofSteps);
        // what was tried before is off the spot, so no bridge stands before the first rung
        String tried = "{contaminant: fallout_iron, age: P40D, surface: clear_2k_sound, facts: {paintAgeDays: 2500, refinished: false, "
                + "totalFilmMicrons: {min: 110, max: 120}}, setting: {panelC: 18, sun: shade, outdoors: true}, tried: [{text: vinegar, "
                + "outcome: no-change}], done: [washed, dried";
        if (!Base.ask(tried + "]}").next().text().equals(Base.ask(tried + ", rinsed]}").next().text())) {
            readBy.add("rinsed");
        }
        assertThat(readBy).isEqualTo(new TreeSet<>(WORDS.done().keySet()));
    }

    @Test
    void every_place_tells_something_and_none_makes_a_surface_sturdier() {
        assertThat(WORDS.places().values()).allSatisfy(p -> {
            assertThat(p.faces() == Facing.HORIZONTAL || p.edge() || !p.traits().isEmpty() || p.sign().isPresent()).as(p.id()).isTrue();
            assertThat(p.traits()).as(p.id()).doesNotContain(Trait.REFINABLE);
        });
    }

    @Test
    void every_sign_of_a_place_is_made_by_a_place_of_the_same_name() {
        KNOWN.observations().keySet().stream().filter(o -> o.startsWith("place_")).forEach(o ->
                assertThat(WORDS.places().get(o.substring("place_".length()))).as(o).isNotNull()
                        .extracting(Place::sign).isEqualTo(java.util.Optional.of(o)));
    }
}
