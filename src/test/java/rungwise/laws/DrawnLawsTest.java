package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.AfterFailureMode;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.lifecycle.AfterProperty;
import net.jqwik.api.lifecycle.BeforeProperty;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.matter.MadeOf;
import rungwise.knowledge.method.Mechanism;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.ToolKind;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.rules.RuleBooks;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The laws of the ladder, put to generated questions. Numbers are those of DEVELOPERS.md. */
@PropertyDefaults(tries = 80, afterFailure = AfterFailureMode.RANDOM_SEED, edgeCases = EdgeCasesMode.NONE)
class DrawnLawsTest {
    private static final String SEED = "20260117";
    private static final Advisor ADVISOR = Base.advisor();
    private static final KnowledgeBase KNOWN = ADVISOR.knowledge();
    private static final JsonMapper JSON = Mappers.json();
    private static final Clashes CLASHES = Clashes.of(ADVISOR);
    private static Share share = new Share();
    private static String law = "";

    @BeforeProperty
    void startCounting() {
        share = new Share();
        law = "";
    }

    @AfterProperty
    void enough_tries_put_the_law_to_the_test() {
        share.isEnough(law);
    }

    private static void count(String name, boolean real) {
        law = name;
        share.count(real);
    }

    @Provide
    Arbitrary<Question> any() {
        return DrawnQuestions.any();
    }

    @Provide
    Arbitrary<Question> untried() {
        return DrawnQuestions.untried();
    }

    @Provide
    Arbitrary<Question> filmy() {
        return DrawnQuestions.filmy();
    }

    @Provide
    Arbitrary<Question> afterChemistry() {
        return DrawnQuestions.afterChemistry();
    }

    @Property(tries = 150, seed = SEED)
    void along_the_rungs_the_order_key_never_falls(@ForAll("any") Question q) {
        Answer answer = ADVISOR.answer(q);
        count("1 order", answer.rungs().size() > 1);
        assertThat(Checks.order(answer)).as(text(q)).isEmpty();
    }

    @Property(tries = 120, seed = SEED)
    void what_is_barred_is_never_offered(@ForAll("any") Question q) {
        Answer all = ADVISOR.answer(q, true);
        Set<String> barred = Checks.barred(all);
        count("2 offered", !barred.isEmpty() && !all.rungs().isEmpty());
        Checks.barredButOffered(all, barred).forEach(w -> share.breach(w + " of " + text(q)));
        all.passedOver().stream().filter(p -> barred.contains(p.method()))
                .forEach(p -> share.breach("passed over " + p.method() + " of " + text(q)));
        Checks.barredButOffered(ADVISOR.answer(q), barred).forEach(w -> share.breach("in part, " + w + " of " + text(q)));
    }

    @Property(tries = 120, seed = SEED)
    void what_is_barred_is_not_among_the_steps_around_the_rungs(@ForAll("any") Question q) {
        Answer all = ADVISOR.answer(q, true);
        Set<String> barred = Checks.barredBeyondTries(all);
        count("2 around", !barred.isEmpty() && !all.rungs().isEmpty());
        Checks.barredButAround(all, barred).forEach(w -> share.breach(w + " of " + text(q)));
    }

    @Property(seed = SEED)
    void no_wish_and_no_consent_lifts_a_bar(@ForAll("any") Question q) {
        Set<String> before = Checks.barred(new Made(q).consent(null).wanted(List.of()).made());
        List<String> everything = Stream.concat(KNOWN.gates().keySet().stream(), KNOWN.methods().keySet().stream()).toList();
        Set<String> after = Checks.barred(new Made(q).consent(new Question.Consent(everything, List.of()))
                .wanted(List.copyOf(KNOWN.methods().keySet())).made());
        count("2 wishes", !before.isEmpty());
        assertThat(after).as(text(q)).containsAll(before);
    }

    @Property(tries = 150, seed = SEED)
    void a_second_surface_never_lifts_a_bar_nor_lowers_a_grade(@ForAll("untried") Question drawn) {
        Question q = new Made(drawn).neighbours(List.of()).made();
        List<String> both = new ArrayList<>(q.surface());
        both.add(DrawnQuestions.pick(new Random(text(q).hashCode()), KNOWN.surfaces().keySet()));
        Answer plain = ADVISOR.answer(q, true);
        Answer strict = ADVISOR.answer(new Made(q).surface(both).made(), true);
        count("3 surfaces", !Checks.barred(strict).equals(Checks.barred(plain)) && !plain.rungs().isEmpty());
        assertThat(Checks.lifted(Checks.barred(plain), Checks.barred(strict))).as("%s with %s", text(q), both).isEmpty();
        assertThat(Checks.gentler(plain, strict)).as("%s with %s", text(q), both).isEmpty();
    }

    @Property(seed = SEED)
    void age_and_heat_move_belief_only_towards_hardened_and_marked(@ForAll("untried") Question q) {
        long days = (long) (q.ageHours().orElse(24) / 24);
        // half of them young: most deposits are hard within two days, and then nothing moves any more
        Question known = q.age().equals("unknown") ? new Made(q).age("P1D").made()
                : days % 2 == 0 ? q : new Made(q).age("PT" + days % 48 + "H").made();
        double hours = known.ageHours().orElse(0);
        Question older = new Made(known).age("PT" + (long) (hours + 72) + "H").made();
        Question hotter = new Made(known).facts(warmest(known, known.facts().warmestPanelC().orElse(45) + 15)).made();
        Answer.State young = Law.belief(ADVISOR.answer(known));
        Answer.State old = Law.belief(ADVISOR.answer(older));
        Answer.State hot = Law.belief(ADVISOR.answer(hotter));
        count("4 belief", !young.equals(old) || !young.equals(hot));
        assertThat(old.hardened()).as(text(q)).isGreaterThanOrEqualTo(young.hardened());
        assertThat(old.marked()).as(text(q)).isGreaterThanOrEqualTo(young.marked());
        assertThat(hot.hardened()).as(text(q)).isGreaterThanOrEqualTo(young.hardened());
        assertThat(hot.marked()).as(text(q)).isGreaterThanOrEqualTo(young.marked());
    }

    @Property(tries = 1, seed = SEED)
    void nothing_gets_likelier_with_age_unless_age_changes_how_it_holds() {
        List<String> gains = new ArrayList<>();
        for (Contaminant contaminant : KNOWN.contaminants().values()) {
            for (Method method : KNOWN.methods().values()) {
                var chances = contaminant.chances(method);
                if (chances.hardened().probability() > chances.fresh().probability() && !contaminant.bond().changes()
                        && contaminant.madeOf().map(MadeOf::fresh).equals(contaminant.madeOf().map(MadeOf::old))
                        && contaminant.form().fresh() == contaminant.form().old()) {
                    gains.add(contaminant.id() + " " + method.id());
                }
            }
        }
        count("4 chances", true);
        assertThat(gains).isEmpty();
    }

    @Property(tries = 200, seed = SEED)
    void after_no_change_the_new_ladder_is_the_old_tail_but_for_what_should_have_come_before(@ForAll("untried") Question q) {
        List<Answer.Rung> rungs = ADVISOR.answer(q).rungs();
        count("5 tail", rungs.size() > 1);
        if (!rungs.isEmpty()) {
            int at = new Random(text(q).hashCode()).nextInt(Math.max(1, rungs.size() - 1));
            List<String> before = rungs.stream().map(Answer.Rung::method).toList();
            List<String> tail = new ArrayList<>(owed(before, at));
            tail.addAll(before.subList(at + 1, before.size()));
            Answer after = ADVISOR.answer(new Made(q).tried(List.of(DrawnQuestions.attempt(before.get(at), "no-change", 1,
                    rungs.get(at).dwell().to(), true))).made());
            assertThat(Checks.isTail(after, tail)).as("%s was %s after %s of %s", Checks.ids(after), tail,
                    before.get(at), text(q)).isTrue();
        }
    }

    /** What dissolves and should have come before a rung that only shears. */
    private static List<String> owed(List<String> rungs, int at) {
        return KNOWN.methods().get(rungs.get(at)).mechanism() != Mechanism.SHEAR ? List.of() : rungs.subList(0, at)
                .stream().filter(r -> KNOWN.methods().get(r).mechanism() != Mechanism.SHEAR
                        && ADVISOR.comesBefore(r, rungs.get(at))).toList();
    }

    @Property(seed = SEED)
    void after_harm_no_rung_is_left_and_the_next_step_is_to_stop(@ForAll("untried") Question q) {
        Answer before = ADVISOR.answer(q);
        count("5 harm", !before.rungs().isEmpty());
        if (!before.rungs().isEmpty()) {
            Answer after = ADVISOR.answer(new Made(q).tried(List.of(DrawnQuestions.attempt(before.rungs().get(0).method(),
                    "harm", 1, 1, true))).made());
            assertThat(after.rungs()).as(text(q)).isEmpty();
            assertThat(after.alternatives()).as(text(q)).isEmpty();
            assertThat(after.next().action()).as(text(q)).isEqualTo("stop");
        }
    }

    @Property(seed = SEED)
    void a_try_on_an_unprepared_panel_teaches_nothing(@ForAll("untried") Question q) {
        Answer before = ADVISOR.answer(q);
        count("5 unprepared", !before.rungs().isEmpty());
        if (!before.rungs().isEmpty()) {
            Answer after = ADVISOR.answer(new Made(q).tried(List.of(DrawnQuestions.attempt(before.rungs().get(0).method(),
                    "no-change", 1, 0, false))).made());
            assertThat(Law.belief(after)).as(text(q)).isEqualTo(Law.belief(before));
        }
    }

    @Property(tries = 100, seed = SEED)
    void after_two_failed_grades_nothing_abrasive_is_next(@ForAll("filmy") Question q) {
        List<Answer.Rung> rungs = ADVISOR.answer(q).rungs();
        count("5 reassess", rungs.size() > 2);
        if (rungs.size() > 2) {
            Answer after = ADVISOR.answer(new Made(q).tried(rungs.subList(0, 2).stream()
                    .map(r -> DrawnQuestions.attempt(r.method(), "no-change", 1, r.dwell().from(), true)).toList()).made());
            if (List.of("try", "test", "repeat", "prepare").contains(after.next().action())) {
                ToolKind tool = KNOWN.toolOf(KNOWN.methods().get(after.next().method().orElseThrow())).kind();
                assertThat(tool.abrades() || tool == ToolKind.CLAY).as(text(q)).isFalse();
            }
        }
    }

    @Property(tries = 100, seed = SEED)
    void less_on_the_shelf_never_adds_a_permitted_method(@ForAll("any") Question q) {
        List<String> full = q.shelf().orElse(DrawnQuestions.things());
        Random random = new Random(text(q).hashCode());
        List<String> less = full.stream().filter(t -> random.nextInt(3) > 0).toList();
        Set<String> more = Checks.permitted(q);
        Set<String> fewer = Checks.permitted(new Made(q).shelf(Optional.of(less)).made());
        count("6 shelf", fewer.size() < more.size());
        assertThat(more).as(text(q)).containsAll(fewer);
    }

    @Property(tries = 100, seed = SEED)
    void less_consent_never_adds_a_permitted_method(@ForAll("any") Question q) {
        Set<String> granted = Checks.permitted(new Made(q).consent(new Question.Consent(List.copyOf(KNOWN.gates().keySet()),
                List.of())).made());
        Set<String> notAsked = Checks.permitted(new Made(q).consent(null).made());
        Set<String> refused = Checks.permitted(new Made(q).consent(new Question.Consent(List.of(),
                List.copyOf(KNOWN.gates().keySet()))).made());
        count("6 consent", refused.size() < granted.size());
        assertThat(granted).as(text(q)).containsAll(notAsked);
        assertThat(notAsked).as(text(q)).containsAll(refused);
    }

    @Property(tries = 100, seed = SEED)
    void from_25_degrees_upward_a_hotter_panel_never_adds_a_permitted_method(@ForAll("any") Question q) {
        Random random = new Random(text(q).hashCode());
        double warm = 25 + random.nextInt(20);
        Set<String> cooler = Checks.permitted(panel(q, warm));
        Set<String> hotter = Checks.permitted(panel(q, warm + 5 + random.nextInt(40)));
        count("6 hotter", hotter.size() < cooler.size());
        assertThat(cooler).as(text(q)).containsAll(hotter);
    }

    @Property(tries = 100, seed = SEED)
    void below_10_degrees_a_colder_panel_never_adds_a_permitted_method(@ForAll("any") Question q) {
        Random random = new Random(text(q).hashCode());
        double cool = 9 - random.nextInt(5);
        Set<String> warmer = Checks.permitted(panel(q, cool));
        Set<String> colder = Checks.permitted(panel(q, cool - 4 - random.nextInt(12)));
        count("6 colder", colder.size() < warmer.size());
        assertThat(warmer).as(text(q)).containsAll(colder);
    }

    @Property(tries = 150, seed = SEED)
    void chemistries_that_clash_carry_a_bridge_or_never_meet_in_one_visit(@ForAll("afterChemistry") Question q) {
        Answer answer = ADVISOR.answer(q);
        count("7 bridges", CLASHES.anyIn(answer));
        assertThat(CLASHES.unbridged(answer)).as(text(q)).isEmpty();
    }

    @Property(tries = 120, seed = SEED)
    void everything_said_has_a_because(@ForAll("any") Question q) {
        Answer answer = ADVISOR.answer(q, true);
        count("8 because", !answer.rungs().isEmpty());
        assertThat(Checks.unreasoned(answer)).as(text(q)).isEmpty();
    }

    @Property(tries = 120, seed = SEED)
    void protection_holds_all_that_agent_tool_method_and_deposit_demand(@ForAll("any") Question q) {
        Answer answer = ADVISOR.answer(q);
        boolean real = false;
        List<String> contaminant = KNOWN.contaminants().get(q.contaminant().orElse("unknown_deposit")).ppe();
        List<Answer.Rung> rungs = Stream.concat(answer.rungs().stream(),
                answer.alternatives().stream().map(Answer.Alternative::rung)).toList();
        for (Answer.Rung rung : rungs) {
            Method method = KNOWN.methods().get(rung.method());
            Set<String> demanded = new TreeSet<>(contaminant);
            demanded.addAll(KNOWN.agentOf(method).ppe());
            demanded.addAll(KNOWN.toolOf(method).ppe());
            demanded.addAll(method.ppe());
            real |= !demanded.isEmpty();
            assertThat(rung.ppe().stream().map(Answer.Ppe::item).toList()).as("%s of %s", rung.method(), text(q))
                    .containsAll(demanded);
        }
        count("9 protection", real);
    }

    @Property(seed = SEED)
    void the_same_question_gives_the_same_answer_whatever_the_order_of_its_fields(@ForAll("any") Question q) {
        String one = JSON.writeValueAsString(ADVISOR.answer(q));
        JsonNode tree = turned(JSON.valueToTree(q));
        Answer again = ADVISOR.answer(QuestionReader.read(tree, KNOWN));
        count("10 fields", !again.rungs().isEmpty());
        assertThat(JSON.writeValueAsString(again)).isEqualTo(one);
    }

    @Property(seed = SEED)
    void the_same_question_gives_the_same_answer_whatever_the_order_of_rules(@ForAll("any") Question q) {
        Answer one = ADVISOR.answer(q, true);
        Answer two = Shuffled.ADVISOR.answer(q, true);
        count("10 rules", !one.rungs().isEmpty());
        assertThat(JSON.writeValueAsString(two)).isEqualTo(JSON.writeValueAsString(one));
    }

    /**
     * The limits of this one: a panel temperature left out is worked out from air and sun, which may lift a bar of the
     * measured one; and an agreement that a known refinish, film or paint age asked for may go with that fact.
     */
    @Property(tries = 100, seed = SEED)
    void removing_a_fact_never_removes_a_bar_without_a_gate_and_never_an_item_of_protection(@ForAll("any") Question q) {
        Answer before = ADVISOR.answer(q, true);
        Set<String> barred = Checks.barred(before);
        boolean real = false;
        for (Map.Entry<String, Question> less : withoutOneFact(q).entrySet()) {
            Answer after = ADVISOR.answer(less.getValue(), true);
            real |= !after.rungs().isEmpty() && !barred.isEmpty();
            Map<String, Answer.Rung> rungsBefore = before.rungs().stream().collect(Collectors.toMap(Answer.Rung::method, r -> r));
            for (Answer.Rung rung : after.rungs()) {
                if (barred.contains(rung.method()) && rung.gates().stream().noneMatch(g -> g.state().equals(Answer.GateState.MISSING))) {
                    share.breach("bar lost without " + less.getKey() + ": " + rung.method() + " of " + text(q));
                }
                Answer.Rung same = rungsBefore.get(rung.method());
                if (same != null) {
                    Set<String> items = new TreeSet<>(same.ppe().stream().map(Answer.Ppe::item).toList());
                    rung.ppe().forEach(i -> items.remove(i.item()));
                    items.forEach(i -> share.breach("protection " + i + " lost without " + less.getKey() + ": "
                            + rung.method() + " of " + text(q)));
                }
            }
        }
        count("12 facts", real);
    }

    @Property(tries = 120, seed = SEED)
    void a_rung_that_takes_film_fits_the_budget_with_its_refining(@ForAll("filmy") Question q) {
        double budget = q.facts().clearMicrons().isPresent()
                ? Math.min(7.5, q.facts().clearMicrons().getAsDouble() / 4) : 3;
        boolean real = false;
        for (Answer.Rung rung : ADVISOR.answer(q).rungs()) {
            if (rung.severity().filmMicrons() >= 0.3) {
                real = true;
                double refining = KNOWN.methods().get(rung.method()).correction().stream().map(KNOWN.methods()::get)
                        .filter(m -> m.family().equals("polish")).mapToDouble(m -> m.severity().filmMicrons()).sum();
                assertThat(rung.severity().filmMicrons() + refining).as("%s of %s", rung.method(), text(q))
                        .isLessThanOrEqualTo(budget);
            }
        }
        count("13 film", real);
    }

    static Map<String, Question> withoutOneFact(Question q) {
        Question.Facts f = q.facts();
        Map<String, Question> less = new TreeMap<>();
        if (f.totalFilmMicrons().isPresent()) {
            less.put("total film", new Made(q).facts(new Question.Facts(null, f.clearMicrons(), f.colour(), f.paintAgeDays(),
                    f.vehicleYear(), f.refinished(), f.place(), f.priorDamage(), f.warmestPanelC(), f.soiling(), f.protection())).made());
        }
        if (f.clearMicrons().isPresent()) {
            less.put("clear", new Made(q).facts(new Question.Facts(f.totalFilmMicrons(), null, f.colour(), f.paintAgeDays(),
                    f.vehicleYear(), f.refinished(), f.place(), f.priorDamage(), f.warmestPanelC(), f.soiling(), f.protection())).made());
        }
        if (f.paintAgeDays().isPresent()) {
            less.put("paint age", new Made(q).facts(new Question.Facts(f.totalFilmMicrons(), f.clearMicrons(), f.colour(), null,
                    f.vehicleYear(), f.refinished(), f.place(), f.priorDamage(), f.warmestPanelC(), f.soiling(), f.protection())).made());
        }
        if (f.refinished().isPresent()) {
            less.put("refinish", new Made(q).facts(new Question.Facts(f.totalFilmMicrons(), f.clearMicrons(), f.colour(),
                    f.paintAgeDays(), f.vehicleYear(), null, f.place(), f.priorDamage(), f.warmestPanelC(), f.soiling(), f.protection())).made());
        }
        if (f.vehicleYear().isPresent()) {
            less.put("build year", new Made(q).facts(new Question.Facts(f.totalFilmMicrons(), f.clearMicrons(), f.colour(),
                    f.paintAgeDays(), null, f.refinished(), f.place(), f.priorDamage(), f.warmestPanelC(), f.soiling(), f.protection())).made());
        }
        if (!q.age().equals("unknown")) {
            less.put("age", new Made(q).age("unknown").made());
        }
        return less;
    }

    private static Question.Facts warmest(Question q, double celsius) {
        Question.Facts f = q.facts();
        return new Question.Facts(f.totalFilmMicrons(), f.clearMicrons(), f.colour(), f.paintAgeDays(), f.vehicleYear(),
                f.refinished(), f.place(), f.priorDamage(), OptionalDouble.of(celsius), f.soiling(), f.protection());
    }

    private static Question panel(Question q, double celsius) {
        return panel(q, OptionalDouble.of(celsius));
    }

    private static Question panel(Question q, OptionalDouble celsius) {
        Question.Setting s = q.setting();
        return new Made(q).setting(new Question.Setting(s.airC(), celsius, s.sun(), s.windMs(), s.humidity(),
                s.indoors(), s.outdoors(), s.water())).made();
    }

    private static JsonNode turned(JsonNode tree) {
        if (!tree.isObject()) {
            return tree;
        }
        ObjectNode turned = JSON.createObjectNode();
        List<String> names = new ArrayList<>(tree.propertyNames());
        Collections.reverse(names);
        names.forEach(n -> turned.set(n, turned(tree.get(n))));
        return turned;
    }

    static String text(Question q) {
        return JSON.writeValueAsString(q);
    }

    /** The same rules in files of other names, the rules in each file the other way round. */
    private static final class Shuffled {
        private static final Advisor ADVISOR = new Advisor(KNOWN, RuleBooks.fromTexts(texts()));

        private static Map<String, String> texts() {
            Map<String, String> texts = new TreeMap<>();
            KnowledgeFiles.builtIn("rules").forEach((name, text) -> {
                String[] parts = text.split("(?m)^(?=rule \")");
                List<String> rules = new ArrayList<>(List.of(parts).subList(1, parts.length));
                Collections.reverse(rules);
                texts.put("z" + (100 - texts.size()) + "-" + name, parts[0] + String.join("\n", rules));
            });
            return texts;
        }
    }
}
