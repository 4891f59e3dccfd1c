package rungwise.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.surface.Trait;
import rungwise.question.QuestionReader;

/** A ladder is short enough to be used: every contaminant, a fortnight old, on the surfaces of any working day. */
class LadderLengthTest {
    private static final List<String> EVERYDAY = List.of("clear_2k_sound", "glass_laminated_screen", "wheel_painted_clear",
            "chrome_plate_metal", "trim_pp_tpo_textured", "rubber_epdm_seal", "softtop_fabric", "tyre_sidewall", "carpet",
            "int_fabric_woven", "leather_coated", "hard_plastic_int");
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final double REAL = KNOWN.decisions().value("real-chance");
    private static final Map<String, Answer> ASKED = new HashMap<>();

    private static Map<String, Answer> answers() {
        if (ASKED.isEmpty()) {
            KNOWN.contaminants().keySet().forEach(c -> EVERYDAY.forEach(s -> ASKED.put(c + " on " + s, Base.advisor()
                    .answer(QuestionReader.read(rungwise.knowledge.load.Mappers.question().readTree("{contaminant: " + c
                            + ", age: P14D, surface: " + s + ", done: [washed, dried], setting: {airC: 20, panelC: 20, "
                            + "sun: shade, outdoors: true}}"), KNOWN)))));
        }
        return ASKED;
    }

    @Test
    void a_ladder_has_eleven_rungs_at_most_and_all_but_two_have_eight() {
        List<String> long8 = new ArrayList<>();
        int longest = 0;
        for (Map.Entry<String, Answer> one : answers().entrySet()) {
            int rungs = one.getValue().rungs().size();
            longest = Math.max(longest, rungs);
            if (rungs > 8) {
                long8.add(one.getKey());
            }
        }
        System.out.println("ladders: " + answers().size() + ", longest " + longest + " rungs, over eight rungs "
                + long8);
        assertThat(longest).isLessThanOrEqualTo(11);
        assertThat(long8).hasSizeLessThanOrEqualTo(2);
    }

    @Test
    void what_is_made_for_tyres_and_wheels_stays_outside() {
        Set<String> outside = Set.of("stiff_brush_tyre", "iron_gel_wheel");
        answers().forEach((spot, answer) -> {
            var surface = KNOWN.surfaces().get(spot.substring(spot.indexOf(" on ") + 4));
            if (surface.is(Trait.NO_RUNNING_WATER) || surface.kind() == SurfaceKind.TEXTILE) {
                assertThat(answer.rungs()).as(spot).noneMatch(r -> outside.contains(r.method()));
            }
        });
    }

    @Test
    void a_harsher_rung_follows_only_for_a_real_chance() {
        List<String> unearned = new ArrayList<>();
        answers().forEach((spot, answer) -> {
            OptionalInt real = OptionalInt.empty();
            for (Answer.Rung rung : answer.rungs()) {
                if (real.isPresent() && worst(rung) > real.getAsInt() && !KNOWN.families().get(KNOWN.methods().get(rung.method()).family()).graded()
                        && rung.chance().mean() < REAL && !takesAPart(spot, answer.ladder().orElseThrow().belief(), rung.method())) {
                    unearned.add(spot + " " + rung.method() + " " + rung.chance().mean());
                }
                if (real.isEmpty() && rung.chance().mean() >= REAL && rung.dwell().to() <= 30) {
                    real = OptionalInt.of(worst(rung));
                }
            }
        });
        assertThat(unearned).isEmpty();
    }

    private static int worst(Answer.Rung rung) {
        return IntStream.of(rung.severity().mechanical(), rung.severity().chemical(), rung.severity().thermal()).max().orElseThrow();
    }

    /** What takes a part of the deposit that is worth a step of its own has a real chance, though the whole stays. */
    private static boolean takesAPart(String spot, Answer.State state, String method) {
        int on = spot.indexOf(" on ");
        Contaminant lies = KNOWN.contaminants().get(spot.substring(0, on)).on(KNOWN.surfaces().get(spot.substring(on + 4)));
        double counts = KNOWN.decisions().value("part-that-counts");
        return List.of(false, true).stream().anyMatch(hardened -> {
            double[] shares = lies.shares(hardened);
            double[] chances = lies.chances(KNOWN.methods().get(method), hardened);
            double believed = hardened ? state.hardened() : state.fresh();
            return IntStream.range(0, shares.length).anyMatch(i -> shares[i] * believed >= counts && chances[i] >= REAL);
        });
    }

    @Test
    void what_was_left_out_for_being_enough_says_how_little_is_left() {
        Answer dust = Base.ask("{contaminant: dust_loose, age: P1D, surface: clear_2k_sound, setting: {panelC: 18}}");
        assertThat(dust.rungs()).hasSizeLessThanOrEqualTo(8);
        assertThat(dust.passedOver()).filteredOn(p -> p.step().equals("enough")).isNotEmpty()
                .allSatisfy(p -> assertThat(p.why()).contains("left to do, against 0.02"));
        Answer sap = Base.ask("{contaminant: sap_conifer, age: P21D, surface: clear_2k_sound, done: [washed, dried], "
                + "setting: {airC: 20, panelC: 20, sun: shade, outdoors: true}}");
        assertThat(sap.passedOver()).filteredOn(p -> p.method().equals("terpene_neat") && p.step().equals("enough"))
                .as("a second solvent counts half, so one likely solvent is not enough").isEmpty();
    }
}
