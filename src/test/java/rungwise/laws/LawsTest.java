package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.LongPredicate;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Contaminant;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Mappers;
import rungwise.knowledge.Mechanism;
import rungwise.knowledge.Method;
import rungwise.knowledge.Reactive;
import rungwise.knowledge.MethodKind;
import rungwise.knowledge.Surface;
import rungwise.ladder.Answer;
import rungwise.rules.Because;

/** The laws that every answer keeps, over questions drawn from the whole knowledge. */
class LawsTest {
    private static final KnowledgeBase BASE = Base.advisor().knowledge();
    private static final int TRIES = 150;

    /** Tries seeds; the law says of each whether it had anything to judge. At least 30 % must. */
    private static void law(String name, LongPredicate judged) {
        AtomicInteger spoke = new AtomicInteger();
        for (long seed = 1; seed <= TRIES; seed++) {
            if (judged.test(seed)) {
                spoke.incrementAndGet();
            }
        }
        System.out.println("law " + name + ": " + spoke.get() * 100 / TRIES + " % of " + TRIES
                + " questions had something to judge");
        assertThat(spoke.get() * 100 / TRIES).as(name).isGreaterThanOrEqualTo(30);
    }

    private static Set<String> permitted(Answer answer) {
        Set<String> permitted = new HashSet<>(BASE.methods().values().stream()
                .filter(m -> m.kind() == MethodKind.REMOVE).map(Method::id).toList());
        answer.barred().forEach(b -> permitted.remove(b.method()));
        return permitted;
    }

    @Test
    void law_1_along_the_rungs_the_key_never_falls() {
        law("1", seed -> {
            Questions draw = new Questions(seed);
            Answer answer = Base.ask(Questions.text(draw.draw(), draw.facts()));
            assertThat(Law.keyNeverFalls(answer)).as(answer.question().toString()).isTrue();
            return answer.rungs().size() >= 2;
        });
    }

    @Test
    void law_2_what_is_barred_appears_nowhere() {
        law("2", seed -> {
            Questions draw = new Questions(seed);
            Answer answer = Base.ask(Questions.text(draw.draw(), draw.facts()));
            assertThat(Law.barredThatAppear(answer)).as(answer.question().toString()).isEmpty();
            return !answer.barred().isEmpty() && !answer.rungs().isEmpty();
        });
    }

    @Test
    void laws_1_and_2_turn_red_on_one_deliberate_break() {
        Answer answer = Base.ask("{contaminant: tar_spot, age: P12D, surface: clear_2k_sound}");
        List<Answer.Rung> swapped = new ArrayList<>(answer.rungs());
        swapped.add(0, swapped.remove(swapped.size() - 1));
        assertThat(Law.keyNeverFalls(Law.with(answer, swapped))).isFalse();
        List<Answer.Barred> barring = new ArrayList<>(answer.barred());
        barring.add(new Answer.Barred(answer.rungs().get(0).method(), "", java.util.Optional.empty(), java.util.Optional.empty(), List.of()));
        assertThat(Law.barredThatAppear(Law.barring(answer, barring))).isNotEmpty();
    }

    @Test
    void law_3_a_stricter_surface_never_lifts_a_bar_nor_lowers_a_grade() {
        List<Surface> paints = BASE.surfaces().values().stream().toList();
        law("3", seed -> {
            Questions draw = new Questions(seed);
            TreeMap<String, String> q = draw.draw();
            q.remove("neighbours");
            Surface other = paints.get(draw.random().nextInt(paints.size()));
            Answer plain = Base.ask(Questions.text(q));
            String one = q.get("surface");
            q.put("surface", "[" + one + ", " + other.id() + "]");
            Answer both = Base.ask(Questions.text(q));
            assertThat(permitted(plain)).as(Questions.text(q)).containsAll(permitted(both));
            for (Answer.Rung rung : both.rungs()) {
                plain.rungs().stream().filter(r -> r.method().equals(rung.method())).forEach(r -> {
                    assertThat(rung.severity().chemical()).isGreaterThanOrEqualTo(r.severity().chemical());
                    assertThat(rung.severity().mechanical()).isGreaterThanOrEqualTo(r.severity().mechanical());
                    assertThat(rung.severity().thermal()).isGreaterThanOrEqualTo(r.severity().thermal());
                });
            }
            return !one.equals(other.id());
        });
    }

    @Test
    void law_4_within_a_bond_class_no_hardened_chance_exceeds_the_fresh_one() {
        for (Contaminant contaminant : BASE.contaminants().values()) {
            for (Method method : BASE.methods().values()) {
                var chances = contaminant.chances(method);
                if (chances.hardened().probability() > chances.fresh().probability()) {
                    assertThat(contaminant.bond().changes()).isTrue();
                    assertThat(contaminant.gainsWithAge()).contains(method.id());
                }
            }
        }
    }

    @Test
    void law_5_after_no_change_the_new_ladder_is_the_old_tail_but_for_what_should_have_come_before() {
        law("5", seed -> {
            Questions draw = new Questions(seed);
            TreeMap<String, String> q = draw.draw();
            TreeMap<String, String> facts = draw.facts();
            Answer before = Base.ask(Questions.text(q, facts));
            if (before.rungs().isEmpty()) {
                return false;
            }
            int at = draw.random().nextInt(Math.max(1, before.rungs().size() - 1));
            List<String> all = before.rungs().stream().map(Answer.Rung::method).toList();
            List<String> tail = new ArrayList<>(owed(all, at));
            tail.addAll(all.subList(at + 1, all.size()));
            q.put("tried", "[{method: " + before.rungs().get(at).method()
                    + ", outcome: no-change, times: 1, dwellMinutes: 1, hoursAgo: 0.5}]");
            List<String> after = Base.ask(Questions.text(q, facts)).rungs().stream().map(Answer.Rung::method).toList();
            List<String> kept = new ArrayList<>(tail);
            kept.retainAll(after);
            assertThat(after).as(Questions.text(q, facts)).isEqualTo(kept);
            return !tail.isEmpty();
        });
    }

    /** What dissolves and should have come before a rung that only shears. */
    private static List<String> owed(List<String> rungs, int at) {
        return BASE.methods().get(rungs.get(at)).mechanism() != Mechanism.SHEAR ? List.of() : rungs.subList(0, at)
                .stream().filter(r -> BASE.methods().get(r).mechanism() != Mechanism.SHEAR
                        && Base.advisor().comesBefore(r, rungs.get(at))).toList();
    }

    @Test
    void law_5_iron_remover_that_was_left_out_comes_before_the_next_clay_and_once_tried_never_again() {
        String spot = "contaminant: fallout_iron, age: P90D, surface: clear_2k_sound, done: [washed, dried], "
                + "facts: {totalFilmMicrons: {min: 115, max: 125}}, shelf: [iron_neutral, clay_fine, clay_medium, machine_finish], "
                + "setting: {airC: 20, panelC: 20, sun: shade, outdoors: true}";
        Answer skipped = Base.ask("{" + spot + ", tried: [{method: clay_fine, outcome: no-change}]}");
        assertThat(skipped.rungs()).extracting(Answer.Rung::method).containsSubsequence("iron_neutral", "clay_medium")
                .doesNotContain("clay_fine");
        Answer both = Base.ask("{" + spot + ", tried: [{method: clay_fine, outcome: no-change}, "
                + "{method: iron_neutral, outcome: no-change}]}");
        assertThat(both.rungs()).extracting(Answer.Rung::method).doesNotContain("iron_neutral", "clay_fine");
        Answer other = Base.ask("{" + spot + ", tried: [{method: iron_neutral, outcome: no-change}, "
                + "{method: clay_fine, outcome: no-change}]}");
        assertThat(other.rungs()).extracting(Answer.Rung::method).doesNotContain("iron_neutral", "clay_fine");
    }

    @Test
    void law_5_after_harm_there_is_no_further_rung() {
        law("5 harm", seed -> {
            TreeMap<String, String> q = new Questions(seed).draw();
            q.put("tried", "[{method: alc_gel, outcome: harm}]");
            Answer answer = Base.ask(Questions.text(q));
            assertThat(answer.rungs()).isEmpty();
            assertThat(answer.next().action()).isEqualTo("stop");
            return true;
        });
    }

    @Test
    void law_6_less_on_the_shelf_less_consent_and_worse_weather_never_add_a_candidate() {
        law("6", seed -> {
            Questions draw = new Questions(seed);
            TreeMap<String, String> q = draw.draw();
            q.remove("consent");
            q.remove("shelf");
            q.put("setting", "{panelC: 20}");
            Set<String> at20 = permitted(Base.ask(Questions.text(q)));
            q.put("setting", "{panelC: 26}");
            Set<String> at26 = permitted(Base.ask(Questions.text(q)));
            q.put("setting", "{panelC: " + (27 + draw.random().nextInt(40)) + "}");
            assertThat(at26).as(Questions.text(q)).containsAll(permitted(Base.ask(Questions.text(q))));
            q.put("setting", "{panelC: 9}");
            Set<String> at9 = permitted(Base.ask(Questions.text(q)));
            q.put("setting", "{panelC: " + (8 - draw.random().nextInt(15)) + "}");
            assertThat(at9).as(Questions.text(q)).containsAll(permitted(Base.ask(Questions.text(q))));
            q.put("setting", "{panelC: 20}");
            q.put("shelf", "[alc_gel, aliph_tar, clay_fine]");
            assertThat(at20).containsAll(permitted(Base.ask(Questions.text(q))));
            q.remove("shelf");
            q.put("consent", "{refused: [consent, g09, g15, g16]}");
            assertThat(at20).containsAll(permitted(Base.ask(Questions.text(q))));
            return !at20.isEmpty();
        });
    }

    @Test
    void law_7_clashing_chemistries_of_one_spot_carry_a_bridge() {
        law("7", seed -> {
            Questions draw = new Questions(seed);
            TreeMap<String, String> q = draw.draw();
            q.remove("shelf");
            q.put("contaminant", List.of("road_film", "brake_dust", "water_spot_mineral", "bird_dropping",
                    "insect_splatter").get(draw.random().nextInt(5)));
            q.put("tried", "[{method: iron_neutral, outcome: no-change, hoursAgo: 1}]");
            Answer answer = Base.ask(Questions.text(q));
            Set<Reactive> clashing = Set.of(Reactive.ACID, Reactive.ALKALI);
            assertThat(Checks.unbridged(answer, "iron_neutral", clashing)).as(Questions.text(q)).isEmpty();
            return answer.rungs().stream().anyMatch(r -> clashing.stream()
                    .anyMatch(BASE.agentOf(BASE.methods().get(r.method()))::holds));
        });
    }

    @Test
    void law_8_everything_said_has_a_because_with_a_source_or_a_basis() {
        law("8", seed -> {
            Questions draw = new Questions(seed);
            Answer a = Base.ask(Questions.text(draw.draw(), draw.facts()));
            List<List<Because>> all = new ArrayList<>();
            a.barred().forEach(b -> all.add(b.because()));
            a.passedOver().forEach(p -> all.add(p.because()));
            a.before().forEach(s -> all.add(s.because()));
            a.after().forEach(s -> all.add(s.because()));
            a.rungs().forEach(r -> {
                all.add(r.because());
                r.gates().forEach(g -> all.add(g.because()));
                r.ppe().forEach(p -> all.add(p.because()));
                r.risks().forEach(k -> all.add(k.because()));
                r.bridgeBefore().forEach(b -> all.add(b.because()));
            });
            assertThat(all).allSatisfy(reasons -> assertThat(reasons).isNotEmpty().allSatisfy(b -> {
                assertThat(b.says()).isNotBlank();
                assertThat(b.basis()).isNotNull();
            }));
            return !a.rungs().isEmpty();
        });
    }

    @Test
    void law_9_protection_is_what_agent_tool_and_deposit_demand_together() {
        law("9", seed -> {
            Questions draw = new Questions(seed);
            Answer answer = Base.ask(Questions.text(draw.draw(), draw.facts()));
            List<String> deposit = BASE.contaminants().get(answer.question().contaminant().orElseThrow()).ppe();
            for (Answer.Rung rung : answer.rungs()) {
                Method method = BASE.methods().get(rung.method());
                List<String> worn = rung.ppe().stream().map(Answer.Ppe::item).toList();
                assertThat(worn).containsAll(BASE.agentOf(method).ppe()).containsAll(BASE.toolOf(method).ppe())
                        .containsAll(deposit);
            }
            return !answer.rungs().isEmpty();
        });
    }

    @Test
    void law_10_the_same_question_gives_the_same_answer_whatever_the_order_of_the_rules() {
        TreeMap<String, String> shuffled = new TreeMap<>();
        rungwise.rules.RuleBooks.texts(java.nio.file.Path.of("rules")).forEach((name, text) -> {
            int body = text.indexOf("rule \"");
            List<String> rules = new ArrayList<>(List.of(text.substring(body).split("(?m)^(?=rule \")")));
            java.util.Collections.shuffle(rules, new java.util.Random(3));
            shuffled.put((char) ('z' - name.charAt(0) + '0') + name, text.substring(0, body)
                    + String.join("\n", rules));
        });
        var other = new rungwise.ladder.Advisor(BASE, rungwise.rules.RuleBooks.fromTexts(shuffled));
        law("10", seed -> {
            Questions draw = new Questions(seed);
            String question = Questions.text(draw.draw(), draw.facts());
            assertThat(Mappers.json().writeValueAsString(Base.ask(other, question)))
                    .isEqualTo(Mappers.json().writeValueAsString(Base.ask(question)));
            return true;
        });
    }

    @Test
    void law_12_removing_a_fact_never_lifts_a_bar_without_asking_for_it() {
        law("12", seed -> {
            Questions draw = new Questions(seed);
            TreeMap<String, String> q = draw.draw();
            q.put("surface", List.of("clear_2k_sound", "clear_2k_hard", "clear_2k_soft").get(draw.random().nextInt(3)));
            TreeMap<String, String> facts = draw.facts();
            facts.put("paintAgeDays", "" + draw.random().nextInt(60));
            Answer with = Base.ask(Questions.text(q, facts));
            facts.remove("paintAgeDays");
            Answer without = Base.ask(Questions.text(q, facts));
            assertThat(Checks.unasked(with, without, "ask_paint_age")).as(Questions.text(q, facts)).isEmpty();
            return without.rungs().size() > with.rungs().size();
        });
    }

    @Test
    void law_12_panel_sun_and_bay_left_out_are_asked_for() {
        Map<String, String> told = Map.of("ask_panel", "{airC: 24, panelC: 52, sun: shade, outdoors: true}",
                "ask_sun", "{airC: 24, panelC: 24, sun: direct, outdoors: true}",
                "ask_bay", "{airC: 24, panelC: 24, sun: shade, indoors: {volumeM3: 60, airChangesPerHour: 0.3}}");
        Map<String, String> untold = Map.of("ask_panel", "{airC: 24, sun: shade, outdoors: true}",
                "ask_sun", "{airC: 24, panelC: 24, outdoors: true}", "ask_bay", "{airC: 24, panelC: 24, sun: shade}");
        told.forEach((gate, setting) -> law("12 " + gate, seed -> {
            Questions draw = new Questions(seed);
            TreeMap<String, String> q = draw.draw();
            TreeMap<String, String> facts = draw.facts();
            q.put("setting", setting);
            Answer with = Base.ask(Questions.text(q, facts));
            q.put("setting", untold.get(gate));
            Answer without = Base.ask(Questions.text(q, facts));
            assertThat(Checks.unasked(with, without, gate)).as(Questions.text(q, facts)).isEmpty();
            return !without.rungs().isEmpty();
        }));
    }

    @Test
    void law_13_a_rung_that_takes_film_stays_within_the_budget_refining_included() {
        law("13", seed -> {
            Questions draw = new Questions(seed);
            TreeMap<String, String> q = draw.draw();
            q.put("contaminant", "overspray_2k");
            q.put("surface", "clear_2k_sound");
            q.put("setting", "{panelC: 20}");
            q.remove("shelf");
            q.remove("consent");
            int clear = 30 + draw.random().nextInt(40);
            Answer answer = Base.ask(Questions.text(q, new TreeMap<>(java.util.Map.of("totalFilmMicrons",
                    "{min: 110, max: 120}", "clearMicrons", "" + clear, "paintAgeDays", "900", "refinished", "false"))));
            double budget = Math.min(7.5, clear / 4.0);
            assertThat(Checks.overBudget(answer, budget)).as(Questions.text(q)).isEmpty();
            return answer.rungs().stream().anyMatch(r -> Checks.taken(r.method()) >= 0.3);
        });
    }
}
