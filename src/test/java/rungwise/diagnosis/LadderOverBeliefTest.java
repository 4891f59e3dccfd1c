package rungwise.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Suspects;
import rungwise.question.Question;
import rungwise.question.QuestionReader;

/** One ladder over all that a deposit may be keeps the laws of a ladder. */
class LadderOverBeliefTest {
    private static Question question(String yaml) {
        return QuestionReader.read(Mappers.question().readTree(yaml), Base.advisor().knowledge());
    }

    private static Answer answer(String yaml, Map<String, Double> belief) {
        return Base.advisor().answer(question(yaml), new Suspects(belief), false, ChanceTable.PRIOR);
    }

    private static final String PANEL = "{surface: clear_2k_sound, setting: {panelC: 20}, done: [washed, dried]}";

    @Test
    void a_certain_belief_gives_the_rungs_of_the_known_deposit() {
        Answer known = Base.advisor().answer(question("{contaminant: tar_spot, age: P12D, surface: clear_2k_sound, "
                + "setting: {panelC: 20}}"));
        Answer mixed = answer("{age: P12D, surface: clear_2k_sound, setting: {panelC: 20}}", Map.of("tar_spot", 1.0));
        assertThat(java.util.stream.Stream.concat(mixed.rungs().stream().map(Answer.Rung::method),
                mixed.alternatives().stream().map(Answer.Alternative::method)).toList())
                .containsAll(known.rungs().stream().filter(r -> r.chance().mean() >= 0.3 && r.severity()
                        .filmMicrons() < 0.3 && r.gates().stream().noneMatch(g -> g.state().equals(Answer.GateState.MISSING)
                        && Base.advisor().knowledge().gates().get(g.id()).needsAgreement()))
                        .map(Answer.Rung::method).toList());
        assertThat(mixed.next().method()).isEqualTo(known.next().method());
    }

    @Test
    void a_hazard_counts_from_two_in_a_hundred_and_not_below() {
        assertThat(answer(PANEL, Map.of("tar_spot", 0.97, "brake_dust_old_friction", 0.03)).next().action())
                .isEqualTo("hold");
        assertThat(answer(PANEL, Map.of("tar_spot", 0.99, "brake_dust_old_friction", 0.01)).next().action())
                .isNotEqualTo("hold");
    }

    @Test
    void a_bar_counts_from_one_in_ten_and_not_below() {
        Map<String, Set<String>> barred = new HashMap<>();
        for (String id : Base.advisor().knowledge().contaminants().keySet()) {
            Answer alone = answer(PANEL, Map.of(id, 1.0));
            if (alone.hold().isEmpty()) {
                barred.put(id, new TreeSet<>(alone.barred().stream().map(Answer.Barred::method).toList()));
            }
        }
        int tried = 0;
        // deposits with a solvent, a wash, an acid, a clay and a polish among their rungs
        for (String first : List.of("tar_spot", "road_film", "water_spot_mineral", "brake_dust", "overspray_2k", "pollen")) {
            List<String> rungs = answer(PANEL, Map.of(first, 1.0)).rungs().stream().map(Answer.Rung::method).toList();
            for (Map.Entry<String, Set<String>> one : barred.entrySet()) {
                Set<String> only = new TreeSet<>(one.getValue());
                only.retainAll(rungs);
                for (String method : only) {
                    tried++;
                    assertThat(answer(PANEL, Map.of(first, 0.89, one.getKey(), 0.11)).rungs())
                            .noneMatch(r -> r.method().equals(method));
                }
            }
        }
        // a suspect whose answer is first aid names no bars, so fewer pairs are left than there were
        assertThat(tried).isGreaterThan(4);
        System.out.println("ladder over a belief: " + tried + " bars of a second suspect on rungs of the first");
    }

    @Test
    void drawn_beliefs_bar_everywhere_and_never_let_the_key_fall() {
        Random random = new Random(11);
        List<String> ids = List.copyOf(Base.advisor().knowledge().contaminants().keySet());
        List<String> surfaces = List.of("clear_2k_sound", "lacquer_nitro_acrylic", "matte_satin_clear", "pmma_lens",
                "rubber_epdm_seal", "glass_tempered_side", "wrap_gloss", "int_fabric_woven", "leather_aniline");
        int withRungs = 0;
        for (int i = 0; i < 120; i++) {
            Map<String, Double> belief = new HashMap<>();
            double first = 0.4 + random.nextDouble() * 0.3;
            belief.put(ids.get(random.nextInt(ids.size())), first);
            belief.merge(ids.get(random.nextInt(ids.size())), 1 - first - 0.05, Double::sum);
            belief.merge(ids.get(random.nextInt(ids.size())), 0.05, Double::sum);
            Answer answer = answer("{surface: " + surfaces.get(random.nextInt(surfaces.size()))
                    + ", setting: {panelC: 20}}", belief);
            Set<String> barred = new TreeSet<>(answer.barred().stream().map(Answer.Barred::method).toList());
            List<Object> last = null;
            withRungs += answer.rungs().isEmpty() ? 0 : 1;
            for (Answer.Rung rung : answer.rungs()) {
                assertThat(barred).doesNotContain(rung.method());
                assertThat(rung.chance().mean()).isGreaterThanOrEqualTo(0.0995);
                assertThat(rung.because()).isNotEmpty();
                rung.ifMarked().forEach(s -> assertThat(barred).doesNotContain(s.step()));
                rung.bridgeBefore().forEach(b -> b.steps().forEach(s -> assertThat(barred).doesNotContain(s)));
                if (last != null) {
                    assertThat(falls(last, rung.severity().key())).as(belief + " " + rung.method()).isFalse();
                }
                last = rung.severity().key();
            }
            answer.alternatives().forEach(a -> assertThat(barred).doesNotContain(a.method()));
            answer.before().forEach(a -> assertThat(barred).doesNotContain(a.step()));
        }
        assertThat(withRungs).isGreaterThan(40);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static boolean falls(List<Object> before, List<Object> now) {
        for (int i = 0; i < before.size(); i++) {
            int compared = ((Comparable) now.get(i)).compareTo(before.get(i));
            if (compared != 0) {
                return compared < 0;
            }
        }
        return false;
    }

    @Test
    void a_failed_try_and_a_new_sign_make_it_resin() {
        Identifier identifier = new Identifier(Base.advisor());
        String before = "{observations: [form_beads, feel_sticky], surface: clear_2k_sound, facts: {place: horizontals}, "
                + "setting: {panelC: 20}, done: [washed, dried]}";
        String after = before.replace("feel_sticky", "feel_sticky, v06").replace("done:",
                "tried: [{method: alk_pre_mild, outcome: no-change}], done:");
        double was = identifier.belief(Spot.of(question(before))).get("sap_conifer");
        double is = identifier.belief(Spot.of(question(after))).get("sap_conifer");
        System.out.printf(java.util.Locale.ROOT, "resin: %.2f before, %.2f after alkali did nothing and a swab turned "
                + "amber%n", was, is);
        assertThat(is).isGreaterThan(was).isGreaterThan(0.85);
        assertThat(identifier.ladder(question(after), false, ChanceTable.PRIOR).rungs()).anyMatch(r -> r.method().startsWith("alc_"))
                .noneMatch(r -> r.method().equals("alk_pre_mild"));
    }

    @Test
    void no_check_may_be_worth_making_and_the_answer_says_so() {
        Identification found = new Identifier(Base.advisor()).identify(Spot.of(question("{observations: [v26, v06, "
                + "feel_sticky], surface: clear_2k_sound, facts: {place: horizontals}, setting: {panelC: 20}}")));
        assertThat(found.check().offered()).isEmpty();
        assertThat(found.check().says()).startsWith("No check");
    }

    @Test
    void a_check_borrows_the_bars_of_its_method() {
        Identification lacquer = new Identifier(Base.advisor()).identify(Spot.of(question("{observations: "
                + "[colour_black, form_raised_dots], surface: lacquer_nitro_acrylic, facts: {place: sills}, "
                + "setting: {panelC: 20}}")));
        assertThat(lacquer.check().notOffered()).anySatisfy(w -> {
            assertThat(w.check()).isEqualTo("petroleum_swab");
            assertThat(w.why()).isNotBlank();
        });
        assertThat(lacquer.check().offered().map(Identification.Check::id)).isNotEqualTo(java.util.Optional
                .of("petroleum_swab"));
    }

    @Test
    void a_sign_said_twice_counts_once() {
        Identifier identifier = new Identifier(Base.advisor());
        double one = identifier.belief(Spot.of(question("{observations: [v02]}"))).get("fallout_iron");
        double more = identifier.belief(Spot.of(question("{observations: [v02, v02]}"))).get("fallout_iron");
        assertThat(more).isEqualTo(one);
    }
}
