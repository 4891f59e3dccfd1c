package rungwise.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.safety.AirHazard;
import rungwise.ladder.Standing;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.rules.fact.Bay;
import rungwise.rules.fact.Panel;
import rungwise.rules.use.Airing;
import rungwise.rules.use.Candidate;
import rungwise.rules.use.Use;
import rungwise.text.Texts;

/** What rises from acid, ammonia and peroxide in water, as it comes to the rules of the air. */
class GasesTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Bay CLOSED = Air.closed(KNOWN);
    private static final Worked WORKED = new Worked(KNOWN);

    /** Method of which the work takes time, with 2 % ammonia in its bottle instead of acid. */
    private static final KnowledgeBase AMMONIA = holding("acid_mild", Map.of("ammonia", 2.0));

    private static KnowledgeBase holding(String agent, Map<String, Double> dissolved) {
        return KNOWN.using("other", KNOWN.methods(), Base.with(KNOWN.agents(), agent, with(KNOWN.agents().get(agent), dissolved)),
                KNOWN.tools());
    }

    private static Airing airing(String method, double airC, Bay bay, int spots) {
        return method.equals("ammonia") ? airing(AMMONIA, new Worked(AMMONIA), "acid_mild", airC, bay, spots)
                : airing(KNOWN, WORKED, method, airC, bay, spots);
    }

    private static Airing airing(KnowledgeBase known, Worked worked, String method, double airC, Bay bay, int spots) {
        Use use = new Standing(known, Base.advisor().rules()).use(known.methods().get(method), known.surfaces().get("clear_2k_sound"));
        return Vapours.of(question(airC, spots), known, worked, new Panel(airC, true, false, 0), bay,
                List.of(new Candidate(use, true, true, 0, 0, 1))).get(0);
    }

    private static Question question(double airC, int spots) {
        Question plain = QuestionReader.read(rungwise.knowledge.load.Mappers.question().readTree("surface: clear_2k_sound"), KNOWN);
        Question.Extent extent = new Question.Extent(OptionalInt.of(spots), OptionalDouble.empty(), OptionalDouble.empty());
        Question.Setting setting = new Question.Setting(OptionalDouble.of(airC), OptionalDouble.empty(), Optional.empty(), 0,
                OptionalDouble.empty(), Optional.empty(), false, Optional.empty());
        return new Question(plain.contaminant(), List.of(), List.of(), plain.age(), extent, plain.surface(), plain.facts(), List.of(),
                List.of(), setting, List.of(), Optional.empty(), false, plain.consent(), List.of(), 0, List.of(), List.of(),
                List.of(), Optional.empty());
    }

    /** By hand for 5 % at 25 °C: 0.833 mol/l ÷ 40.5 mol/(m³ Pa) = 20.6 Pa, 203 ppm right over it. */
    @Test
    void acetic_acid_never_comes_to_more_than_stands_over_the_bottle() {
        assertThat(airing("acid_mild", 25, new Bay(10, 0), 480).parts()).singleElement().satisfies(p -> {
            assertThat(p.name()).isEqualTo("Acetic acid");
            assertThat(p.limitPpm()).isEqualTo(10);
            assertThat(p.ppm()).isCloseTo(203, within(2.0));
        });
    }

    @Test
    void one_spot_of_mild_acid_in_a_hall_is_hardly_worth_a_word_and_a_shift_of_it_in_a_garage_is_over_its_limit() {
        assertThat(airing("acid_mild", 20, new Bay(400, 6), 1).shareOfLimit()).isLessThan(1);
        Airing shift = airing("acid_mild", 20, CLOSED, 480);
        assertThat(shift.shareOfLimit()).isGreaterThan(1);
        assertThat(shift.hazards()).containsExactly(AirHazard.ACID);
        assertThat(Texts.ENGLISH.of(shift.figures())).contains("acetic acid", "of 10 ppm").doesNotContain("stands in");
    }

    /** No cartridge is made for peroxide; ammonia and acid each take their own (cartridge-colours). */
    @Test
    void the_respirator_is_made_for_the_gas() {
        for (String method : List.of("acid_mild", "ammonia", "peroxide_3", "percarbonate")) {
            for (int spots : List.of(1, 20, 480)) {
                Airing airing = airing(method, 20, CLOSED, spots);
                airing.respirator().ifPresent(r -> assertThat(r.against()).as(method).containsAll(airing.hazards()));
            }
        }
        assertThat(airing("ammonia", 20, CLOSED, 20).hazards()).contains(AirHazard.AMMONIA);
        assertThat(airing("peroxide_3", 20, CLOSED, 480).respirator().filter(r -> r.isCartridge())).isEmpty();
    }

    @Property(tries = 60)
    void warmer_closer_or_more_of_it_never_comes_to_less(@ForAll @IntRange(min = 0, max = 3) int which,
                                                         @ForAll @DoubleRange(min = 0, max = 35) double airC,
                                                         @ForAll @DoubleRange(min = 0, max = 10) double warmer,
                                                         @ForAll @DoubleRange(min = 20, max = 400) double volume,
                                                         @ForAll @DoubleRange(min = 0, max = 10) double changes,
                                                         @ForAll @DoubleRange(min = 0, max = 10) double more,
                                                         @ForAll @IntRange(min = 1, max = 300) int spots) {
        String method = List.of("acid_mild", "ammonia", "peroxide_3", "percarbonate").get(which);
        double share = airing(method, airC, new Bay(volume, changes), spots).shareOfLimit();
        assertThat(airing(method, airC + warmer, new Bay(volume, changes), spots).shareOfLimit()).isGreaterThanOrEqualTo(share * 0.999999);
        assertThat(airing(method, airC, new Bay(volume, changes + more), spots).shareOfLimit()).isLessThanOrEqualTo(share * 1.000001);
        assertThat(airing(method, airC, new Bay(volume * 2, changes), spots).shareOfLimit()).isLessThanOrEqualTo(share * 1.000001);
        assertThat(airing(method, airC, new Bay(volume, changes), spots * 2).shareOfLimit()).isGreaterThanOrEqualTo(share * 0.999999);
    }

    @Test
    void three_spots_in_an_aired_hall_ask_for_no_more_air_and_a_door_in_a_shut_garage_does() {
        String asked = "{contaminant: water_spot_mineral, age: P4D, surface: clear_2k_sound, done: [washed, dried], extent: %s, "
                + "setting: {airC: 20, panelC: 20, sun: shade, indoors: %s}}";
        Answer few = Base.ask(asked.formatted("{spots: 3}", "{volumeM3: 400, airChangesPerHour: 6}"));
        Answer.Rung here = few.rungs().stream().filter(r -> r.method().equals("acid_mild")).findFirst().orElseThrow();
        assertThat(here.gates()).noneMatch(g -> g.id().equals("more_air"));
        Answer.Rung there = Base.ask(asked.formatted("{areaM2: 6}", "{volumeM3: 60, airChangesPerHour: 0.5}")).rungs().stream()
                .filter(r -> r.method().equals("acid_mild")).findFirst().orElseThrow();
        assertThat(there.gates()).filteredOn(g -> g.id().equals("more_air")).singleElement()
                .satisfies(g -> assertThat(g.because().stream().map(Base::found).toList().toString()).contains("acetic acid", "of 10 ppm"));
    }

    @Test
    void a_stronger_agent_of_the_same_kind_holds_more_free_gas() {
        List<Double> free = new ArrayList<>();
        for (double percent : new double[]{0.5, 1, 2, 5, 10}) {
            KnowledgeBase known = holding("acid_mild", Map.of("ammonia", percent));
            free.add(new Gases(known).of(known.agents().get("acid_mild")).get(0).molar());
        }
        assertThat(free).isSorted();
        // by hand: 2 % is 1.17 mol/l, all but half a percent of it free at pH 11.7
        assertThat(free.get(2)).isCloseTo(1.17, within(0.01));
    }

    private static Agent with(Agent a, Map<String, Double> dissolved) {
        return new Agent(a.id(), a.name(), a.family(), a.form(), a.acidity(), a.solvents(), a.reactive(), a.dilution(), a.mix(),
                a.residueRinse(), a.sensitisers(), a.ppe(), a.risks(), a.alwaysAtHand(), a.composition(), a.layer(), dissolved,
                a.basis(), a.sources());
    }
}
