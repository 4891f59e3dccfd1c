package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Likely;
import rungwise.question.Question;

/**
 * Four breaks that no test noticed once, each with the sentence that notices it and kept here: made in a sound answer, it
 * turns the sentence red. The fifth, of what a log teaches, is kept beside the log.
 */
class BeliefBreaksTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Set<String> TESTED = KNOWN.gates().values().stream().filter(g -> g.opens().testPassed()).map(g -> g.id())
            .collect(Collectors.toSet());
    private static final String OTHER = "road_film";
    private static final Clashes CLASHES = Clashes.of(Base.advisor());
    /** A prior of the trade counts as so many tries, as it has been shown until now. */
    private static final double PRIOR_TRIES = 20;
    /** What a prior that nobody has tried is worth at most. */

    private static boolean isKnown(Question q) {
        return q.contaminant().filter(c -> !c.equals(OTHER)).isPresent();
    }

    /** As if it might also be something harmless. */
    private static Map<String, Double> mixed(Question q) {
        return Map.of(q.contaminant().orElseThrow(), 0.65, OTHER, 0.35);
    }

    /** One in so many, the same ones always. */
    private static boolean isOneOf(Question q, int many) {
        return Math.floorMod((q.contaminant().orElse("") + q.surface() + q.age()).hashCode(), many) == 0;
    }

    private static Placed rungs(Placed answer, UnaryOperator<Placed.Offer> change) {
        return answer.with(answer.rungs().stream().map(change).toList());
    }

    // ---- a passed test spot

    /** Other methods whose test spot counts as passed since this one passed. */
    private static List<String> openedAlong(Placed untested, Placed tested, String passed) {
        Map<String, Placed.Offer> before = untested.offered().collect(Collectors.toMap(Placed.Offer::method, r -> r, (one, two) -> one,
                TreeMap::new));
        return tested.offered().filter(r -> !r.method().equals(passed) && before.containsKey(r.method())).flatMap(r -> TESTED.stream()
                .filter(g -> before.get(r.method()).hasMissing(g) && r.gates().containsKey(g) && !r.hasMissing(g))
                .map(g -> r.method() + " opened by the test of another")).toList();
    }

    private static List<String> testable(Placed answer) {
        return answer.offered().filter(r -> TESTED.stream().anyMatch(r::hasMissing)).map(Placed.Offer::method).distinct().toList();
    }

    private static Question passed(Question q, String method) {
        return new Question(q.contaminant(), q.observations(), q.notSeen(), q.age(), q.extent(), q.surface(), q.facts(), q.circumstances(),
                q.neighbours(), q.setting(), q.workers(), q.shelf(), q.shelfStrict(), q.consent(), q.done(), q.canWaitMinutes(),
                List.of(method), q.wanted(), q.tried(), q.mixing());
    }

    @Test
    void a_passed_test_spot_opens_the_gate_of_its_own_method_and_of_no_other() {
        Breaks breaks = new Breaks("12 a test spot opens its own gate");
        Breaks mute = new Breaks("12 a test spot opens its own gate at all");
        int broken = 0;
        int mixtures = 0;
        for (Question q : UsualSpots.all().filter(q -> isKnown(q) && q.age().equals(UsualSpots.AGES.get(1))).toList()) {
            for (boolean named : List.of(true, false)) {
                if (!isOneOf(q, named ? 2 : 5)) {
                    continue;
                }
                Map<String, Double> belief = mixed(q);
                Placed untested = named ? Placed.plain(q) : Placed.over(belief, q);
                List<String> gated = testable(untested);
                if (gated.size() < 2) {
                    continue;
                }
                Question then = passed(q, gated.get(0));
                Placed tested = named ? Placed.plain(then) : Placed.over(belief, then);
                mixtures += named ? 0 : 1;
                breaks.look(tested, true, openedAlong(untested, tested, gated.get(0)));
                mute.look(tested, true, tested.offered().filter(r -> r.method().equals(gated.get(0)) && TESTED.stream()
                        .anyMatch(r::hasMissing)).map(r -> r.method() + " stays shut though its test passed").toList());
                // the break: one passed test opens the gate of every method
                Placed wrong = rungs(tested, r -> r.gatedBy(r.gates().entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey,
                        g -> TESTED.contains(g.getKey()) ? "met" : g.getValue()))));
                broken += openedAlong(untested, wrong, gated.get(0)).isEmpty() ? 0 : 1;
            }
        }
        breaks.none();
        mute.none();
        assertThat(breaks.real()).isGreaterThan(20);
        assertThat(mixtures).isGreaterThan(5);
        assertThat(broken).as("answers in which the break is seen").isGreaterThan(15);
    }

    // ---- what several suspects ask for, and bridges past a neighbour

    @Test
    void protection_of_the_likeliest_suspect_alone_is_seen() {
        int seen = 0;
        Random random = new Random(9);
        for (int i = 0; i < 60 && seen < 5; i++) {
            Placed answer = DrawnBeliefs.untried(random).answer();
            if (!BeliefChecks.otherAsksForMore(answer) || !BeliefChecks.unprotected(answer).isEmpty()) {
                continue;
            }
            // the break: each rung asks for what it asks for the likeliest alone
            Placed first = Placed.plain(answer.question().about(answer.suspects(1).get(0)));
            Placed wrong = rungs(answer, r -> r.protectedBy(first.offered().filter(o -> o.method().equals(r.method())).findFirst()
                    .map(Placed.Offer::protection).orElseGet(() -> demandedBy(r.method()))));
            seen += BeliefChecks.unprotected(wrong).isEmpty() ? 0 : 1;
        }
        assertThat(seen).isGreaterThanOrEqualTo(3);
    }

    private static Set<String> demandedBy(String method) {
        Set<String> items = new TreeSet<>(KNOWN.methods().get(method).ppe());
        items.addAll(KNOWN.agentOf(KNOWN.methods().get(method)).ppe());
        items.addAll(KNOWN.toolOf(KNOWN.methods().get(method)).ppe());
        return items;
    }

    @Test
    void bridges_after_the_direct_neighbour_alone_are_seen() {
        int seen = 0;
        Random random = new Random(7);
        for (int i = 0; i < 60 && seen < 5; i++) {
            Placed answer = DrawnBeliefsTest.afterChemistry(random).answer();
            if (!CLASHES.anyApart(answer) || !CLASHES.unbridged(answer).isEmpty()) {
                continue;
            }
            // the break: each rung is bridged after the one before it, the first after what was used last
            List<Placed.Offer> rungs = new ArrayList<>();
            for (Placed.Offer rung : answer.rungs()) {
                Set<String> neighbour = new HashSet<>();
                Stream<String> used = rungs.isEmpty() ? Visits.today(answer.question()).stream().map(a -> a.id())
                        : Stream.of(KNOWN.methods().get(rungs.get(rungs.size() - 1).method()).agent());
                used.reduce((one, later) -> later).ifPresent(neighbour::add);
                rungs.add(rung.bridgedBy(rung.bridges().stream().filter(b -> neighbour.contains(b.after())).toList()));
            }
            assertThat(CLASHES.unbridged(answer.with(rungs))).isNotEmpty();
            seen++;
        }
        assertThat(seen).isGreaterThanOrEqualTo(3);
    }

    // ---- ranges

    private static final List<Question> SPOTS = UsualSpots.all().filter(q -> isKnown(q)
            && q.surface().get(0).startsWith("clear_2k") && isOneOf(q, 3)).toList();

    private static Placed.Offer narrowed(Placed.Offer r) {
        Placed.Chance c = r.chance();
        return r.with(new Placed.Chance(c.mean(), c.mean() - (c.mean() - c.low()) / 4, c.mean() + (c.high() - c.mean()) / 4));
    }

    @Test
    void a_range_holds_eight_in_ten_of_what_twenty_tries_leave_open() {
        Breaks breaks = new Breaks("ranges hold what they promise");
        Breaks narrow = new Breaks("ranges four times too narrow");
        for (Question q : SPOTS) {
            Map<String, Double> belief = mixed(q);
            for (Placed answer : List.of(Placed.plain(q), Placed.over(belief, q))) {
                breaks.look(answer, !answer.rungs().isEmpty(), Ranges.tooNarrow(answer, PRIOR_TRIES));
                // the break: ranges four times too narrow
                narrow.look(answer, !answer.rungs().isEmpty(), Ranges.tooNarrow(rungs(answer, BeliefBreaksTest::narrowed), PRIOR_TRIES));
            }
        }
        breaks.noneOfEnough();
        assertThat(narrow.broken()).as("answers in which the break is seen").isGreaterThan(narrow.real() * 8 / 10);
    }

    @Test
    void a_range_after_forty_tries_holds_what_forty_tries_leave_open_and_is_narrower() {
        ChanceTable tried = (contaminant, method, surface) -> {
            Likely prior = ChanceTable.PRIOR.of(contaminant, method, surface);
            return new Likely(prior.ifFresh(), prior.ifHardened(), 40, 40, true);
        };
        Breaks breaks = new Breaks("ranges after forty tries");
        List<String> wider = new ArrayList<>();
        for (Question q : SPOTS) {
            Map<String, Double> belief = Map.of(q.contaminant().orElseThrow(), 1.0);
            for (boolean named : List.of(true, false)) {
                Placed before = named ? Placed.plain(q) : Placed.over(belief, q);
                Placed after = named ? Placed.learned(q, tried) : Placed.over(belief, q, tried);
                breaks.look(after, !after.rungs().isEmpty(), Ranges.tooNarrow(after, PRIOR_TRIES + 40));
                after.rungs().forEach(r -> before.rungs().stream().filter(b -> b.method().equals(r.method())
                        && b.chance().high() - b.chance().low() <= r.chance().high() - r.chance().low())
                        .forEach(b -> wider.add(r.method() + " of " + q.contaminant())));
            }
        }
        breaks.noneOfEnough();
        assertThat(wider).isEmpty();
    }

    /** Twenty tries that nobody made are not there; a letter of the trade is worth five. */
}
