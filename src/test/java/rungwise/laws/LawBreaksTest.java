package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.load.Mappers;

/** The checks of the laws see a break when there is one. */
class LawBreaksTest {
    private final Answer sound = Base.ask("""
            contaminant: tar_spot
            age: P12D
            surface: clear_2k_sound
            facts: {totalFilmMicrons: {min: 110, max: 120}, paintAgeDays: 2900, refinished: false}
            setting: {airC: 22, panelC: 20, sun: shade}
            """);

    @Test
    void two_rungs_that_changed_places_are_seen() {
        List<Answer.Rung> swapped = new ArrayList<>(sound.rungs());
        Collections.swap(swapped, 0, swapped.size() - 1);
        assertThat(Checks.order(sound)).isEmpty();
        assertThat(Checks.order(Law.with(sound, swapped))).isNotEmpty();
    }

    @Test
    void a_barred_method_among_the_rungs_is_seen() {
        Set<String> barred = Checks.barred(sound);
        assertThat(barred).isNotEmpty();
        assertThat(Checks.barredButOffered(sound, barred)).isEmpty();
        assertThat(Checks.barredButOffered(withRung(barred.iterator().next()), barred)).isNotEmpty();
    }

    @Test
    void a_barred_step_around_the_rungs_is_seen() {
        assertThat(Checks.barredButAround(sound, Checks.barredBeyondTries(sound))).isEmpty();
        assertThat(Checks.barredButAround(sound, Set.of(sound.after().get(0).step()))).isNotEmpty();
    }

    @Test
    void a_grade_that_falls_is_seen() {
        Answer soft = Base.ask("{contaminant: tar_spot, age: P12D, surface: [clear_2k_sound, clear_2k_soft], "
                + "setting: {airC: 22, panelC: 20, sun: shade}}");
        assertThat(Checks.gentler(sound, soft)).isEmpty();
        assertThat(Checks.gentler(soft, sound)).isNotEmpty();
    }

    @Test
    void a_deposit_that_softens_with_age_is_seen() {
        Answer.State state = Law.belief(sound);
        assertThat(Checks.younger(state, state)).isEmpty();
        assertThat(Checks.younger(state, new Answer.State(1, 0, state.marked()))).isNotEmpty();
    }

    @Test
    void a_gentler_rung_that_comes_back_after_a_failure_is_seen() {
        List<String> tail = Checks.ids(sound).subList(1, sound.rungs().size());
        assertThat(Checks.isThinned(tail.subList(1, tail.size()), tail)).isTrue();
        assertThat(Checks.isThinned(Checks.ids(sound), tail)).isFalse();
    }

    @Test
    void a_bar_that_heat_lifts_is_seen() {
        Set<String> barred = Checks.barred(sound);
        assertThat(Checks.lifted(barred, barred)).isEmpty();
        assertThat(Checks.lifted(barred, Set.of())).isNotEmpty();
    }

    @Test
    void a_rung_without_a_reason_or_without_its_protection_is_seen() {
        Answer.Rung r = sound.rungs().get(0);
        List<Answer.Rung> rungs = new ArrayList<>(sound.rungs());
        rungs.set(0, Law.with(r, r.method(), List.of(), r.gates(), List.of()));
        assertThat(Checks.unreasoned(sound)).isEmpty();
        assertThat(Checks.unreasoned(Law.with(sound, rungs))).isNotEmpty();
        assertThat(Checks.unprotected(sound)).isEmpty();
        assertThat(Checks.unprotected(Law.with(sound, rungs))).isNotEmpty();
    }

    /** The rules but one. */
    private static Advisor without(String rule) {
        return new Advisor(Base.advisor().knowledge(), Base.advisor().rules().without(rule));
    }

    @Test
    void a_clash_without_its_bridge_is_seen() {
        String question = """
                contaminant: water_spot_mineral
                age: P20D
                surface: clear_2k_sound
                facts: {totalFilmMicrons: {min: 110, max: 120}, paintAgeDays: 2900, refinished: false}
                setting: {airC: 22, panelC: 20, sun: shade, outdoors: true}
                tried: [{method: iron_neutral, outcome: no-change, hoursAgo: 1}]
                """;
        Set<Reactive> acid = Set.of(Reactive.ACID);
        assertThat(Checks.unbridged(Base.ask(question), "iron_neutral", acid)).isEmpty();
        assertThat(Checks.unbridged(Base.ask(without("iron-remover-and-acid"), question), "iron_neutral", acid)).isNotEmpty();
    }

    @Test
    void an_answer_that_changed_by_one_rule_is_seen() {
        String text = Mappers.json().writeValueAsString(sound);
        Advisor same = new Advisor(Base.advisor().knowledge(), Base.advisor().rules().unfired());
        assertThat(Mappers.json().writeValueAsString(same.answer(sound.question(), true))).isEqualTo(text);
        assertThat(Mappers.json().writeValueAsString(without("ask-whether-repainted").answer(sound.question(), true))
                + Mappers.json().writeValueAsString(without("hard-water-dried").answer(sound.question(), true))).isNotEqualTo(text + text);
    }

    @Test
    void a_fact_that_is_left_out_and_not_asked_for_is_seen() {
        String with = "{contaminant: tar_spot, age: P12D, surface: clear_2k_sound, facts: {paintAgeDays: 20, refinished: false}}";
        String untold = "{contaminant: tar_spot, age: P12D, surface: clear_2k_sound, facts: {refinished: false}}";
        Answer young = Base.ask(with);
        assertThat(Checks.unasked(young, Base.ask(untold), "ask_paint_age")).isEmpty();
        assertThat(Checks.unasked(young, Base.ask(untold), "a gate that nobody raises")).isNotEmpty();
    }

    @Test
    void a_rung_beyond_the_film_budget_is_seen() {
        assertThat(Checks.overBudget(sound, 7.5)).isEmpty();
        assertThat(Checks.overBudget(withRung("machine_cut"), 2)).isNotEmpty();
    }

    private Answer withRung(String method) {
        Answer.Rung r = sound.rungs().get(0);
        List<Answer.Rung> rungs = new ArrayList<>(sound.rungs());
        rungs.add(Law.with(r, method, r.ppe(), r.gates(), r.because()));
        return Law.with(sound, rungs);
    }
}
