package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.question.Question;
import rungwise.question.QuestionReader;

/**
 * Law 14: with everything explained every remover stands in exactly one place of the answer, whatever was tried before. A
 * method of which nobody can say why it is not there is a method that somebody will try.
 */
class CompletenessTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    static final List<String> REMOVERS = KNOWN.methods().values().stream().filter(m -> m.kind() == MethodKind.REMOVE)
            .map(Method::id).toList();
    /**
     * One of each way to hold, on what it is met on: paint, glass, wheel, rubber, cloth, leather, hard parts, metal, a lens; and
     * one that has a slow method beside its ladder.
     */
    private static final List<Question> SPOTS = List.of(
            spot("tar_spot", "clear_2k_sound", "P12D", ""), spot("fallout_iron", "clear_2k_sound", "P90D", ""),
            spot("sap_conifer", "clear_2k_soft", "P5D", ""), spot("water_spot_mineral", "glass_laminated_screen", "P30D", ""),
            spot("brake_dust", "wheel_painted_clear", "P60D", ""), spot("moss", "rubber_epdm_seal", "P300D", ""),
            spot("coffee_tea", "int_fabric_woven", "P2D", ""), spot("ink_ballpoint", "leather_coated", "P2D", ""),
            spot("grease_food", "hard_plastic_int", "P2D", ""), spot("exhaust_soot", "stainless", "P30D", ""),
            spot("road_paint_waterborne", "clear_2k_sound", "P2D", ""),
            spot("lens_yellowing", "pc_lens_worn", "P400D", ""), spot("swirl_marring", "clear_2k_hard", "P30D",
                    "facts: {totalFilmMicrons: {min: 120, max: 130}, clearMicrons: 44}, consent: {granted: [consent, supervision]}"));
    private static final Map<Placed.Place, Integer> SEEN = new EnumMap<>(Placed.Place.class);

    private static Question spot(String contaminant, String surface, String age, String more) {
        return QuestionReader.read(Mappers.question().readTree("{contaminant: " + contaminant + ", surface: " + surface + ", age: "
                + age + ", done: [washed, dried], setting: {airC: 20, panelC: 20, sun: shade, outdoors: true}"
                + (more.isEmpty() ? "" : ", " + more.replace("[consent, supervision]", Law.AGREEMENTS.toString())) + "}"), KNOWN);
    }

    private static Question.Tried tried(String method, String outcome) {
        return DrawnQuestions.attempt(method, outcome, 1, KNOWN.methods().get(method).dwell().from(), true);
    }

    /** Of every remover that does not stand in exactly one place, where it stands. */
    static List<String> misplaced(Placed answer) {
        if (answer.isStopped()) {
            return List.of();
        }
        Map<String, List<Placed.Place>> places = answer.places();
        List<String> wrong = new ArrayList<>();
        for (String method : REMOVERS) {
            List<Placed.Place> at = places.getOrDefault(method, List.of());
            if (at.size() != 1) {
                wrong.add(method + (at.isEmpty() ? " stands nowhere" : " stands at " + at));
            }
        }
        return wrong;
    }

    private static void look(Placed answer, Breaks breaks) {
        answer.places().values().forEach(at -> at.forEach(p -> SEEN.merge(p, 1, Integer::sum)));
        breaks.look(answer, !answer.isStopped(), misplaced(answer));
    }

    @Test
    void before_any_try_every_remover_stands_in_one_place() {
        Breaks breaks = new Breaks("14 one place each");
        SPOTS.forEach(q -> look(Placed.named(q), breaks));
        breaks.none();
    }

    @ParameterizedTest(name = "after a try of any remover that ended with {0}")
    @ValueSource(strings = {"no-change", "partly", "cleared"})
    void every_remover_stands_in_one_place(String outcome) {
        Breaks breaks = new Breaks("14 one place each");
        int at = outcome.length();
        for (String method : REMOVERS) {
            // every remover on one spot, every spot with its share of the removers
            Question q = SPOTS.get(at++ % SPOTS.size());
            look(Placed.named(new Made(q).tried(List.of(tried(method, outcome))).made()), breaks);
        }
        // and of every spot the rungs that were really offered
        for (Question q : SPOTS) {
            Placed.named(q).ids().forEach(method -> look(Placed.named(new Made(q).tried(List.of(tried(method, outcome))).made()), breaks));
        }
        breaks.none();
    }

    @Test
    void after_two_or_three_tries_of_the_ladders_own_rungs_every_remover_stands_in_one_place() {
        Breaks breaks = new Breaks("14 one place each");
        Random random = new Random(14);
        for (Question q : SPOTS) {
            List<String> rungs = Placed.named(q).ids();
            for (int i = 0; i < 6 && rungs.size() > 1; i++) {
                List<Question.Tried> tried = new ArrayList<>();
                int many = 2 + random.nextInt(2);
                for (int t = 0; t < many; t++) {
                    tried.add(tried(rungs.get(random.nextInt(rungs.size())), DrawnQuestions.pick(random,
                            List.of("no-change", "no-change", "partly"))));
                }
                look(Placed.named(new Made(q).tried(tried).made()), breaks);
            }
        }
        breaks.none();
    }

    @Test
    void over_a_belief_every_remover_stands_in_one_place_before_and_after_tries() {
        Breaks breaks = new Breaks("14 one place each");
        Random random = new Random(15);
        for (int i = 0; i < 40; i++) {
            look(DrawnBeliefs.any(random).answer(), breaks);
        }
        breaks.none();
    }

    /** What was used up opens again with the next visit: who says "never" of it has put it in the easiest place. */
    @Test
    void a_try_makes_nothing_a_never() {
        Breaks breaks = new Breaks("14 a try makes nothing a never");
        for (Question q : SPOTS) {
            Placed before = Placed.named(q);
            for (String method : before.ids()) {
                Placed after = Placed.named(new Made(q).tried(List.of(tried(method, "no-change"))).made());
                Set<String> more = at(after, Placed.Place.NEVER);
                more.removeAll(at(before, Placed.Place.NEVER));
                breaks.look(after, true, more.stream().map(m -> m + " is never used once " + (m.equals(method) ? "it" : "another")
                        + " was tried").toList());
            }
        }
        breaks.none();
    }

    private static Set<String> at(Placed answer, Placed.Place place) {
        return answer.left().stream().filter(l -> l.place() == place).map(Placed.Left::method).collect(Collectors.toCollection(TreeSet::new));
    }

    @AfterAll
    static void every_place_was_met() {
        System.out.println("law 14: " + REMOVERS.size() + " removers, places " + SEEN);
        assertThat(SEEN.keySet()).containsExactlyInAnyOrder(Placed.Place.values());
    }

    /** What the check sees when there is something to see. */
    @Test
    void a_method_that_stands_nowhere_or_twice_is_seen() {
        Placed sound = Placed.named(SPOTS.get(0));
        assertThat(misplaced(sound)).isEmpty();
        List<Placed.Left> fewer = new ArrayList<>(sound.left());
        Placed.Left gone = fewer.remove(3);
        assertThat(misplaced(sound.leaving(fewer))).containsExactly(gone.method() + " stands nowhere");
        fewer.add(gone);
        fewer.add(new Placed.Left(Placed.Place.USED_UP, gone.method(), "", List.of()));
        assertThat(misplaced(sound.leaving(fewer))).hasSize(1).first().asString().startsWith(gone.method() + " stands at");
    }
}
