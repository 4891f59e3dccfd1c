package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.MethodKind;
import rungwise.question.Question;
import rungwise.rules.said.Clash;

/**
 * Law 7 as a calendar: what may never meet stands in two visits, what may meet after a bridge has the bridge as a step of
 * its own with minutes, and the step that is next names the bridge that lies before it.
 */
class VisitsTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Clashes CLASHES = Clashes.of(Base.advisor());
    private static final Visits VISITS = new Visits(CLASHES);
    private static final Breaks TOGETHER = new Breaks("7 what may never share a visit stands in two");
    private static final Breaks NEEDLESS = new Breaks("7 no visit without need");
    private static final Breaks TIMELESS = new Breaks("7 a bridge takes its minutes");
    private static final Breaks UNTOLD = new Breaks("7 next names the bridge that is due");
    private static final Breaks IDLE = new Breaks("7 next names no bridge that is not due");

    @BeforeAll
    static void look() {
        // where bleach and what it must not meet are both on the ladder
        String agreed = "shelf: [hypochlorite_dilute, alc_50, quat_disinfectant, acid_mild, weak_acid, percarbonate], consent: {granted: "
                + Law.AGREEMENTS + "}, done: [washed, dried]";
        List<String> bleachable = KNOWN.surfaces().keySet().stream()
                .filter(s -> Base.advisor().barsOn(s, "hypochlorite_dilute").isEmpty()).toList();
        for (String contaminant : KNOWN.contaminants().keySet()) {
            bleachable.forEach(s -> plan(Placed.plain(UsualSpots.of(contaminant, s, "P14D", agreed))));
        }
        UsualSpots.all().filter(q -> q.age().equals(UsualSpots.AGES.get(1))).map(VisitsTest::washed).forEach(q -> {
            Placed before = Placed.plain(q);
            plan(before);
            IDLE.look(before, !before.rungs().isEmpty(), idle(before));
            clashing(before).ifPresent(agent -> {
                Placed after = Placed.plain(new Made(q).tried(List.of(used(agent))).made());
                plan(after);
                UNTOLD.look(after, !Visits.due(after).isEmpty(), Visits.untold(after));
            });
        });
    }

    private static void plan(Placed answer) {
        TOGETHER.look(answer, VISITS.hasSuch(answer), VISITS.together(answer));
        NEEDLESS.look(answer, answer.rungs().stream().anyMatch(r -> r.visit() > 1), VISITS.needless(answer));
        TIMELESS.look(answer, answer.rungs().stream().anyMatch(r -> !r.bridges().isEmpty()), VISITS.timeless(answer));
    }

    /** Something that may be followed by the first rung after a bridge, and not without. */
    private static Optional<String> clashing(Placed answer) {
        return answer.rungs().stream().limit(1).map(r -> KNOWN.agentOf(KNOWN.methods().get(r.method()))).flatMap(now ->
                KNOWN.agents().values().stream().filter(first -> {
                    List<Clash> clashes = CLASHES.of(first, now);
                    return !clashes.isEmpty() && clashes.stream().noneMatch(Clash::visit) && clashes.stream().anyMatch(c -> !c.bridge().isEmpty());
                })).min(Comparator.comparing(Agent::id)).map(Agent::id);
    }

    private static Question washed(Question q) {
        return UsualSpots.of(q.contaminant().orElseThrow(), q.surface().get(0), q.age(), "done: [washed, dried, vacuumed, blotted]");
    }

    private static Question.Tried used(String agent) {
        return new Question.Tried(Optional.empty(), Optional.of(agent), Optional.empty(), "no-change", 1, 1, 1, Optional.empty(), List.of());
    }

    /** Bridges and clean-ups named before the first rung, where nothing was used that they could be for. */
    private static List<String> idle(Placed answer) {
        Set<MethodKind> between = Set.of(MethodKind.BRIDGE, MethodKind.CLEAN_UP);
        List<String> before = answer.before().stream().map(Placed.Step::name).toList();
        return answer.next().steps().stream().filter(s -> !before.contains(s) && KNOWN.methods().containsKey(s)
                && between.contains(KNOWN.methods().get(s).kind())).map(s -> "next names " + s + " though nothing was used").toList();
    }

    @Test
    void what_may_never_share_a_visit_stands_in_two() {
        // bleach gives way to the disinfectant everywhere, so that hardly any ladder has such a pair; that one is seen is tested below
        TOGETHER.none();
    }

    @Test
    void nothing_is_put_off_to_another_visit_without_need() {
        NEEDLESS.none();
    }

    @Test
    void a_bridge_takes_its_minutes() {
        TIMELESS.none();
        assertThat(TIMELESS.real()).as("ladders with a bridge").isGreaterThan(50);
    }

    @Test
    void the_next_step_names_the_bridge_that_lies_before_it() {
        UNTOLD.noneOfEnough();
    }

    @Test
    void the_next_step_names_no_bridge_where_nothing_was_used() {
        IDLE.noneOfEnough();
    }

    /** What the checks see when there is something to see. */
    @Test
    void a_pair_in_one_visit_a_needless_cut_and_a_silent_next_step_are_seen() {
        Placed any = Placed.plain(UsualSpots.of("leaf_tannin", "hard_plastic_int", "P14D", ""));
        Placed.Offer bleach = offer(any, "hypochlorite_dilute").onVisit(1);
        Placed.Offer alcohol = offer(any, "alc_50").onVisit(1);
        Placed.Offer water = offer(any, "damp_microfibre").onVisit(1);
        assertThat(VISITS.together(any.with(List.of(alcohol, bleach)))).hasSize(1);
        assertThat(VISITS.together(any.with(List.of(alcohol, bleach.onVisit(2))))).isEmpty();
        assertThat(VISITS.needless(any.with(List.of(alcohol, bleach.onVisit(2))))).isEmpty();
        assertThat(VISITS.needless(any.with(List.of(water, alcohol.onVisit(2))))).hasSize(1);
        assertThat(VISITS.needless(any.with(List.of(alcohol, bleach.onVisit(2), water)))).as("a visit that goes back").hasSize(1);
        List<Placed.Bridge> rinse = List.of(new Placed.Bridge("alc_50", List.of("flood_rinse"), 0));
        assertThat(VISITS.timeless(any.with(List.of(water.bridgedBy(rinse))))).hasSize(1);
        assertThat(VISITS.timeless(any.with(List.of(water.bridgedBy(List.of(new Placed.Bridge("alc_50", List.of("flood_rinse"), 2)))))))
                .isEmpty();
    }

    private static Placed.Offer offer(Placed like, String method) {
        List<Placed.Offer> rungs = new ArrayList<>(like.rungs());
        return rungs.stream().filter(r -> r.method().equals(method)).findFirst().orElseGet(() -> rungs.get(0).of(method)).bridgedBy(List.of());
    }
}
