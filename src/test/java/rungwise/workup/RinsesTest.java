package rungwise.workup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.method.Agent;
import rungwise.question.QuestionReader;

/** How much rinsing is enough, as it comes out in an answer. Serial dilution and charge balance: PublishedExamplesTest. */
class RinsesTest {
    private static final Rinses RINSES = new Rinses(Base.advisor().knowledge());

    private static Rinse after(String agent) {
        return RINSES.after(Base.advisor().knowledge().agents().get(agent)).orElseThrow();
    }

    @Test
    void acid_takes_some_passes_to_come_near_the_water_itself_and_says_what_one_less_leaves() {
        Rinse rinse = after("acid_mild");
        assertThat(rinse.basis()).isEqualTo("computed");
        assertThat(rinse.times().orElseThrow()).isBetween(2, 4);
        assertThat(rinse.litresPerM2()).hasValue(rinse.times().orElseThrow() * 2.0);
        assertThat(rinse.leavesAcidity().orElseThrow()).isBetween(7.0, 8.0);
        assertThat(rinse.because()).singleElement().satisfies(b -> assertThat(Base.found(b))
                .contains("as used", "one pass less", "soft tap water"));
    }

    /** A weaker acid of the same kind never takes more. */
    @Test
    void a_tenth_of_the_acid_takes_no_more_passes() {
        assertThat(after("weak_acid").times().orElseThrow()).isLessThanOrEqualTo(after("acid_mild").times().orElseThrow());
        Base.advisor().knowledge().agents().values().forEach(a -> RINSES.after(a).ifPresent(r -> assertThat(r.times().isPresent())
                .as(a.id()).isEqualTo(r.basis().equals("computed"))));
    }

    @Test
    void what_nobody_states_the_make_up_of_keeps_its_stated_minutes() {
        for (String agent : List.of("cement_softener", "iron_neutral")) {
            Agent known = Base.advisor().knowledge().agents().get(agent);
            Rinse rinse = after(agent);
            assertThat(rinse.basis()).isEqualTo("table");
            assertThat(rinse.minutes()).isEqualTo(known.residueRinse());
            assertThat(rinse.times()).isEmpty();
            assertThat(rinse.because()).singleElement().satisfies(b -> assertThat(Base.found(b)).contains("is not stated"));
        }
        assertThat(RINSES.after(Agent.NONE)).isEqualTo(Optional.empty());
    }

    /** Acid frees chlorine from bleach (mixing-bleach) and meets alkali with salt: both bridges say how much rinse is enough. */
    @Test
    void a_bridge_from_acid_to_alkali_and_to_bleach_says_how_much_is_enough() {
        Answer.Bridge toAlkali = bridge(Base.ask("{contaminant: oil_grease, age: P2D, surface: clear_2k_sound, setting: {panelC: 18}, "
                + "done: [washed], tried: [{substance: acid_mild, outcome: no-change, hoursAgo: 1}]}"));
        assertThat(toAlkali.rinse()).hasValueSatisfying(r -> {
            assertThat(r.times().orElseThrow()).isEqualTo(after("acid_mild").times().orElseThrow());
            assertThat(r.because()).isNotEmpty();
        });
        var known = Base.advisor().knowledge();
        var clashes = Base.advisor().revision().sequence().clashes(known.agents().get("acid_mild"), known.agents().get("hypochlorite_dilute"),
                rungwise.knowledge.method.Tool.NONE);
        assertThat(clashes).singleElement().satisfies(c -> assertThat(c.conclusion().visit()).as("never in one visit").isTrue());
        assertThat(after("acid_mild").leavesAcidity().orElseThrow()).as("above where chlorine is set free").isGreaterThan(7);
        assertThat(after("hypochlorite_dilute").times().orElseThrow()).isGreaterThanOrEqualTo(2);
    }

    @Test
    void the_wash_after_everything_goes_by_the_longest_rinse() {
        Answer answer = Base.ask("{contaminant: water_spot_mineral, age: P4D, surface: clear_2k_sound, setting: {panelC: 18}, "
                + "done: [washed, dried]}");
        assertThat(answer.after()).filteredOn(s -> s.step().equals("neutral_rewash")).singleElement()
                .satisfies(s -> assertThat(s.rinse()).hasValue(after("acid_mild")));
        assertThat(answer.after()).filteredOn(s -> !s.step().equals("neutral_rewash")).allMatch(s -> s.rinse().isEmpty());
    }

    private static Rinses by(String water) {
        return RINSES.by(Optional.of(QuestionReader.read(Mappers.question().readTree(
                "{surface: clear_2k_sound, setting: {water: " + water + "}}"), Base.advisor().knowledge()).setting().water().orElseThrow()));
    }

    private static int times(Rinses rinses, String agent) {
        return rinses.after(Base.advisor().knowledge().agents().get(agent)).flatMap(Rinse::times).orElseThrow();
    }

    /** hardness-permanent-and-temporary: alkalinity is what takes up acid; more of it never asks for another pass. */
    @Test
    void more_alkaline_water_never_takes_more_passes_and_for_some_agents_fewer() {
        int fewer = 0;
        for (Agent agent : Base.advisor().knowledge().agents().values()) {
            int before = 11;
            for (int mgL : List.of(0, 1, 2, 5, 10, 25, 50, 100, 200, 400, 1000)) {
                Optional<Integer> times = by("{alkalinityMgL: " + mgL + "}").after(agent).flatMap(Rinse::times);
                if (times.isPresent()) {
                    assertThat(times.get()).as(agent.id() + " at " + mgL).isLessThanOrEqualTo(before);
                    fewer += before < 11 && times.get() < before ? 1 : 0;
                    before = times.get();
                }
            }
        }
        assertThat(fewer).isGreaterThanOrEqualTo(5);
    }

    @Test
    void soft_water_takes_a_pass_more_and_alkaline_water_one_less() {
        assertThat(times(RINSES, "acid_mild")).isEqualTo(3);
        assertThat(times(by("{hardnessMgL: 5}"), "acid_mild")).isEqualTo(4);
        assertThat(times(RINSES, "weak_acid")).isEqualTo(3);
        assertThat(times(by("{alkalinityMgL: 200}"), "weak_acid")).isEqualTo(2);
    }

    /** hardness-permanent-and-temporary: hardness beyond the alkalinity is permanent, so that hard water alone promises nothing. */
    @Test
    void hardness_alone_never_saves_a_pass() {
        Base.advisor().knowledge().agents().values().forEach(a -> RINSES.after(a).flatMap(Rinse::times).ifPresent(untold -> {
            for (int mgL : List.of(0, 10, 24, 60, 180, 600)) {
                assertThat(times(by("{hardnessMgL: " + mgL + "}"), a.id())).as(a.id() + " at " + mgL).isGreaterThanOrEqualTo(untold);
            }
        }));
    }

    @Test
    void the_answer_says_which_water_it_reckoned_with_and_what_it_assumed() {
        String spot = "{contaminant: water_spot_mineral, age: P4D, surface: clear_2k_sound, setting: {panelC: 18%s}, done: [washed, dried]}";
        Answer untold = Base.ask(spot.formatted(""));
        assertThat(untold.assumed()).filteredOn(a -> a.fact().equals("waterHardnessMgL")).singleElement()
                .satisfies(a -> assertThat(a.because()).singleElement().satisfies(b -> assertThat(b.allSources()).contains("water-hardness-classes")));
        Answer told = Base.ask(spot.formatted(", water: {hardnessMgL: 5}"));
        assertThat(told.assumed()).noneMatch(a -> a.fact().equals("waterHardnessMgL"));
        assertThat(rewash(told).times()).hasValue(4);
        assertThat(rewash(told).because()).anySatisfy(b -> assertThat(Base.found(b))
                .contains("hardness 5 mg/l", "its alkalinity not told"));
        assertThat(rewash(untold).times()).hasValue(3);
    }

    private static Rinse rewash(Answer answer) {
        return answer.after().stream().filter(s -> s.step().equals("neutral_rewash")).findFirst().orElseThrow().rinse().orElseThrow();
    }

    private static Answer.Bridge bridge(Answer answer) {
        return answer.rungs().stream().flatMap(r -> r.bridgeBefore().stream()).filter(b -> b.after().equals("acid_mild"))
                .findFirst().orElseThrow(() -> new AssertionError(answer.rungs().stream().map(Answer.Rung::method).toList()
                        + " " + answer.passedOver()));
    }

    /** The recalled make-up is no milder than the stated window allows, give or take a unit of pH. */
    @Test
    void what_is_dissolved_gives_about_the_stated_acidity() {
        Base.advisor().knowledge().agents().values().stream().filter(a -> !a.dissolved().isEmpty() && a.acidity().isPresent())
                .forEach(a -> RINSES.after(a).ifPresent(r -> {
                    String facts = Base.found(r.because().get(0));
                    double as = Double.parseDouble(facts.replaceAll(".*pH ([0-9.−-]+) as used.*", "$1"));
                    assertThat(as).as(a.id() + " " + a.acidity()).isBetween(a.acidity().get().from() - 1.5, a.acidity().get().to() + 1.5);
                }));
    }
}
