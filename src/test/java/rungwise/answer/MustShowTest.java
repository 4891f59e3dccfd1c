package rungwise.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rungwise.Base;

/** What the ladder has to show on spots that everybody in the trade knows. */
class MustShowTest {
    private static List<String> rungs(Answer answer) {
        return answer.rungs().stream().map(Answer.Rung::method).toList();
    }

    private static String pointless(Answer answer, String method) {
        return answer.passedOver().stream().filter(p -> p.method().equals(method) && p.step().equals("pointless"))
                .map(Answer.PassedOver::why).findFirst().orElse("");
    }

    @Test
    void tar_on_sound_clear_gets_petroleum_or_terpene_and_passes_alcohol_and_iron_remover_over_with_their_chance() {
        Answer answer = Base.ask("{contaminant: tar_spot, age: P12D, surface: clear_2k_sound}");
        assertThat(rungs(answer)).containsAnyOf("aliph_tar", "terpene_neat");
        assertThat(pointless(answer, "alc_gel")).contains("0.03");
        assertThat(pointless(answer, "iron_neutral")).contains("0.03");
    }

    @Test
    void the_same_tar_on_lacquer_bars_alcohol_terpene_and_ester() {
        Answer answer = Base.ask("{contaminant: tar_spot, age: P12D, surface: lacquer_nitro_acrylic}");
        for (String method : List.of("alc_50", "alc_70", "alc_gel", "terpene_neat", "ester_solvent")) {
            assertThat(Base.bars(answer, method)).as(method).isTrue();
        }
    }

    @Test
    void the_same_tar_on_fresh_paint_leaves_water_only_and_says_wait() {
        Answer answer = Base.ask("{contaminant: tar_spot, age: P12D, surface: clear_2k_fresh_30}");
        assertThat(answer.rungs()).allMatch(r -> List.of("water", "wash").contains(
                Base.advisor().knowledge().methods().get(r.method()).family()));
        assertThat(answer.next().action()).isIn("wait", "leave", "refer");
    }

    @Test
    void hardened_resin_meets_alcohol_before_petroleum_and_never_clay_or_melamine_before_them() {
        List<String> rungs = rungs(Base.ask("{contaminant: sap_conifer, age: P21D, surface: clear_2k_sound}"));
        int alcohol = rungs.indexOf("alc_gel");
        assertThat(alcohol).isNotNegative();
        assertThat(rungs.subList(0, alcohol)).doesNotContain("aliph_tar", "naphtha_light", "clay_fine", "melamine");
    }

    @Test
    void a_smell_of_gas_holds_everything() {
        Answer answer = Base.ask("{contaminant: tar_spot, surface: clear_2k_sound, circumstances: [gas_smell]}");
        assertThat(answer.hold()).isPresent();
        assertThat(answer.next().action()).isEqualTo("hold");
        assertThat(answer.rungs()).isEmpty();
    }

    @Test
    void the_first_rung_stands_when_all_minutes_move_by_a_fifth_at_random() {
        java.util.Random random = new java.util.Random(20261125);
        for (String contaminant : List.of("sap_conifer", "tar_spot", "fallout_iron", "water_spot_mineral",
                "bird_dropping", "overspray_2k")) {
            String question = "{contaminant: " + contaminant + ", age: P30D, surface: clear_2k_sound, "
                    + "setting: {panelC: 20}, done: [washed, dried]}";
            String first = Base.ask(question).rungs().get(0).method();
            int same = 0;
            for (int draw = 0; draw < 60; draw++) {
                var k = Base.advisor().knowledge();
                var moved = new java.util.TreeMap<>(k.methods());
                moved.replaceAll((id, m) -> Shaken.minutes(m, random));
                Advisor shaken = new Advisor(k.using(k.revision(), moved, k.agents(), k.tools()),
                        Base.advisor().rules());
                same += Base.ask(shaken, question).rungs().get(0).method().equals(first) ? 1 : 0;
            }
            assertThat(same).as(contaminant + " first rung " + first).isEqualTo(60);
        }
    }
}
