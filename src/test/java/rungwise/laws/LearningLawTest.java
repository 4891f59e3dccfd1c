package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import org.junit.jupiter.api.Assertions;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Likely;
import rungwise.question.Question;
import rungwise.shoplog.Adversary;

/**
 * Law 11: what a log teaches moves chances and minutes, none of them to certain; never severity, order, bars, gates or protection.
 * The logs are written to break it.
 */
class LearningLawTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Share SHARE = new Share();
    private static int minutes;

    /** A question and what a hostile log taught of its deposit. */
    record Case(Question question, ChanceTable learned) {
        @Override
        public String toString() {
            return question.toString();
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        return Arbitraries.randomValue(r -> {
            Question q = r.nextInt(3) == 0 ? DrawnQuestions.tried(r, DrawnQuestions.fresh(r)) : DrawnQuestions.fresh(r);
            return new Case(q, Adversary.table(r, q.contaminant().orElse("unknown_deposit")));
        });
    }

    @Property(tries = 150, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void a_hostile_log_moves_chances_and_nothing_else(@ForAll("cases") Case drawn) {
        Answer prior = Base.advisor().answer(drawn.question(), true);
        Answer learned = Base.advisor().answer(drawn.question(), true, drawn.learned());
        assertThat(wrong(prior, learned)).as(drawn.toString()).isEmpty();
        learned.rungs().stream().filter(l -> prior.rungs().stream().anyMatch(r -> r.method().equals(l.method()) && r.minutes() != l.minutes()))
                .forEach(l -> minutes++);
        SHARE.count(prior.rungs().stream().anyMatch(r -> learned.rungs().stream().anyMatch(l ->
                l.method().equals(r.method()) && l.chance().mean() != r.chance().mean())));
    }

    @AfterContainer
    static void was_put_to_the_test() {
        assertThat(minutes).as("minutes that moved, and moved nothing else").isPositive();
        SHARE.isEnough("11, a log moves chances and nothing else");
    }

    /** What law 11 and the laws about one answer find wrong. */
    private static List<String> wrong(Answer prior, Answer learned) {
        List<String> wrong = new ArrayList<>();
        wrong.addAll(Checks.order(learned));
        Set<String> barred = Checks.barred(prior);
        wrong.addAll(Checks.barredButOffered(learned, barred));
        wrong.addAll(Checks.unreasoned(learned));
        if (!prior.barred().equals(learned.barred())) {
            wrong.add("the bars differ");
        }
        if (!prior.hold().equals(learned.hold()) || !prior.assumed().equals(learned.assumed())) {
            wrong.add("a hold or an assumption differs");
        }
        Map<String, Answer.Rung> before = new HashMap<>();
        prior.rungs().forEach(r -> before.put(r.method(), r));
        for (Answer.Rung rung : learned.rungs()) {
            Answer.Rung was = before.get(rung.method());
            if (was != null) {
                same("grades of " + rung.method(), was.severity(), rung.severity(), wrong);
                same("gates of " + rung.method(), was.gates(), rung.gates(), wrong);
                same("protection of " + rung.method(), was.ppe(), rung.ppe(), wrong);
                same("dwell of " + rung.method(), was.dwell(), rung.dwell(), wrong);
                same("steps if " + rung.method() + " cleared", was.ifCleared(), rung.ifCleared(), wrong);
                same("steps if " + rung.method() + " marked", was.ifMarked(), rung.ifMarked(), wrong);
                same("tries of " + rung.method(), was.tries(), rung.tries(), wrong);
            }
        }
        List<String> both = new ArrayList<>(Checks.ids(learned));
        both.retainAll(Checks.ids(prior));
        if (!Checks.isThinned(both, Checks.ids(prior))) {
            wrong.add("the order differs: " + Checks.ids(prior) + " and " + Checks.ids(learned));
        }
        return wrong;
    }

    private static void same(String what, Object before, Object after, List<String> wrong) {
        if (!before.equals(after)) {
            wrong.add(what + ": " + before + " became " + after);
        }
    }

    @Property(tries = 40, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void every_chance_stays_within_its_bounds_and_hardened_under_fresh(@ForAll Random random) {
        Contaminant aimed = DrawnQuestions.pick(random, KNOWN.contaminants().values());
        ChanceTable table = Adversary.table(random, aimed.id());
        Set<String> broken = new TreeSet<>();
        int moved = 0;
        for (Contaminant contaminant : KNOWN.contaminants().values()) {
            for (Method method : KNOWN.methods().values()) {
                Likely prior = ChanceTable.PRIOR.of(contaminant, method, SurfaceKind.PAINT);
                for (SurfaceKind surface : SurfaceKind.values()) {
                    Likely now = table.of(contaminant, method, surface);
                    moved += now.learned() ? 1 : 0;
                    if (!(now.ifFresh() >= 0.01 && now.ifFresh() <= 0.98 && now.ifHardened() >= 0.01 && now.ifHardened() <= 0.98)
                            || now.ifHardened() > now.ifFresh() && prior.ifHardened() <= prior.ifFresh()) {
                        broken.add(contaminant.id() + " " + method.id() + " " + surface + " " + prior + " " + now);
                    }
                }
            }
        }
        assertThat(broken).isEmpty();
        assertThat(moved).isPositive();
    }

    /** Law 5 with learned chances: after the first rung failed, the new ladder is the old tail, perhaps shorter. */
    @Property(tries = 60, seed = "20261125", shrinking = ShrinkingMode.OFF)
    void after_no_change_the_learned_ladder_is_its_own_tail(@ForAll("cases") Case drawn) {
        Question fresh = new Made(drawn.question()).tried(List.of()).made();
        Answer before = Base.advisor().answer(fresh, true, drawn.learned());
        if (before.rungs().size() < 2) {
            return;
        }
        Answer.Rung first = before.rungs().get(0);
        Answer after = Base.advisor().answer(new Made(fresh).tried(List.of(DrawnQuestions.attempt(first.method(),
                "no-change", 1, first.dwell().from(), true))).made(), true, drawn.learned());
        List<String> tail = Checks.ids(before).subList(1, before.rungs().size());
        Assertions.assertTrue(Checks.isThinned(Checks.ids(after), tail), () -> tail + " became " + Checks.ids(after));
    }

    /** The check sees a break when there is one. */
    @net.jqwik.api.Example
    void a_log_that_moved_a_gate_would_be_seen() {
        Answer sound = Base.ask("{contaminant: tar_spot, age: P12D, surface: clear_2k_sound}");
        Answer.Rung r = sound.rungs().get(0);
        List<Answer.Rung> rungs = new ArrayList<>(sound.rungs());
        rungs.set(0, Law.with(r, r.method(), r.ppe(), List.of(), r.because()));
        assertThat(wrong(sound, sound)).isEmpty();
        assertThat(wrong(sound, Law.with(sound, rungs))).anyMatch(w -> w.startsWith("gates of"));
    }
}
