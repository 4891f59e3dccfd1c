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

    private Answer with(List<Answer.Rung> rungs) {
        return new Answer(sound.revision(), sound.question(), sound.assumed(), sound.hold(), sound.belief(),
                sound.before(), rungs, sound.alternatives(), sound.passedOver(), sound.barred(), sound.neighbours(),
                sound.after(), sound.wayOut(), sound.next(), sound.expected());
    }
}
