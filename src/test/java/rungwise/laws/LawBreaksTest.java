package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.ladder.Answer;

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
        assertThat(Checks.order(with(swapped))).isNotEmpty();
    }

    @Test
    void a_barred_method_among_the_rungs_is_seen() {
        Set<String> barred = Checks.barred(sound);
        assertThat(barred).isNotEmpty();
        Answer.Rung r = sound.rungs().get(0);
        List<Answer.Rung> rungs = new ArrayList<>(sound.rungs());
        rungs.add(new Answer.Rung(r.rank(), barred.iterator().next(), r.name(), r.severity(), r.chance(), r.minutes(),
                r.agent(), r.dwell(), r.staysWet(), r.window(), r.pressureBar(), r.tool(), r.technique(), r.tries(), r.level(),
                r.stopSigns(), r.risks(), r.ppe(), r.gates(), r.waste(), r.bridgeBefore(), r.ifCleared(), r.ifMarked(),
                r.because()));
        assertThat(Checks.barredButOffered(sound, barred)).isEmpty();
        assertThat(Checks.barredButOffered(with(rungs), barred)).isNotEmpty();
    }

    @Test
    void a_deposit_that_softens_with_age_is_seen() {
        Answer.State state = sound.belief();
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
        rungs.set(0, new Answer.Rung(r.rank(), r.method(), r.name(), r.severity(), r.chance(), r.minutes(), r.agent(),
                r.dwell(), r.staysWet(), r.window(), r.pressureBar(), r.tool(), r.technique(), r.tries(), r.level(),
                r.stopSigns(), r.risks(), List.of(), r.gates(), r.waste(), r.bridgeBefore(), r.ifCleared(),
                r.ifMarked(), List.of()));
        assertThat(Checks.unreasoned(sound)).isEmpty();
        assertThat(Checks.unreasoned(with(rungs))).isNotEmpty();
        assertThat(Checks.unprotected(sound)).isEmpty();
        assertThat(Checks.unprotected(with(rungs))).isNotEmpty();
    }

    private Answer with(List<Answer.Rung> rungs) {
        return new Answer(sound.revision(), sound.question(), sound.assumed(), sound.hold(), sound.belief(),
                sound.before(), rungs, sound.alternatives(), sound.passedOver(), sound.barred(), sound.neighbours(),
                sound.after(), sound.wayOut(), sound.next(), sound.expected());
    }
}
