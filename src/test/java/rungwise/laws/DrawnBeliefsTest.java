package rungwise.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.question.Question;

/**
 * Laws 2, 7, 8, 9 and 12 where nobody knows what it is. They are the same sentences as for a deposit that has a name, and
 * count for every suspect that is believed enough. Drawn once, held against all of them.
 */
class DrawnBeliefsTest {
    private static final long SEED = 20_261_201;
    private static final int DRAWN = 70;
    private static final int AFTER_CHEMISTRY = 50;
    private static final int FACTS_LEFT_OUT = 20;
    /** Six agents on one spot are mostly used up: one answer in seven still offers two chemistries that clash. */
    private static final int APART = 12;
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Clashes CLASHES = Clashes.of(Base.advisor());
    private static final Breaks NAMED = new Breaks("2 over a belief");
    private static final Breaks PASSED_OVER = new Breaks("2 over a belief: barred or not worth it, not both");
    private static final Breaks BRIDGES = new Breaks("7 bridges over a belief");
    private static final Breaks FOLLOWS = new Breaks("7 what follows over a belief");
    private static final Breaks REASONS = new Breaks("8 over a belief");
    private static final Breaks PROTECTION = new Breaks("9 over a belief");
    private static final Breaks FACTS = new Breaks("12 over a belief");

    @BeforeAll
    static void draw() {
        Random random = new Random(SEED);
        for (int i = 0; i < DRAWN; i++) {
            DrawnBeliefs.Case drawn = DrawnBeliefs.any(random);
            Placed answer = drawn.answer();
            boolean real = !answer.rungs().isEmpty();
            NAMED.look(answer, real && !answer.barred(true).isEmpty(), BeliefChecks.barredButNamed(answer));
            PASSED_OVER.look(answer, real, BeliefChecks.barredButPassedOver(answer));
            FOLLOWS.look(answer, real, BeliefChecks.unfollowed(answer));
            List<String> unreasoned = new ArrayList<>(BeliefChecks.unreasoned(answer));
            Reasons.unresolved(answer).forEach(id -> unreasoned.add(id + " leads nowhere"));
            REASONS.look(answer, real, unreasoned);
            PROTECTION.look(answer, BeliefChecks.otherAsksForMore(answer), BeliefChecks.unprotected(answer));
            if (i < FACTS_LEFT_OUT) {
                leaveOut(drawn, answer);
            }
        }
        for (int i = 0; i < AFTER_CHEMISTRY; i++) {
            Placed answer = afterChemistry(random).answer();
            BRIDGES.look(answer, CLASHES.anyApart(answer), CLASHES.unbridged(answer));
        }
    }

    private static void leaveOut(DrawnBeliefs.Case drawn, Placed with) {
        boolean real = false;
        List<String> lost = new ArrayList<>();
        for (Map.Entry<String, Question> less : DrawnLawsTest.withoutOneFact(drawn.question()).entrySet()) {
            Placed without = drawn.asking(less.getValue()).answer();
            real |= !without.rungs().isEmpty() && !with.barred(true).isEmpty();
            lost.addAll(BeliefChecks.lost(with, without, less.getKey()));
        }
        FACTS.look(with, real, lost);
    }

    /** Six reactive agents were put on it within the day. */
    static DrawnBeliefs.Case afterChemistry(Random random) {
        DrawnBeliefs.Case drawn = DrawnBeliefs.untried(random);
        return drawn.asking(new Made(drawn.question()).tried(DrawnQuestions.spent(random, CLASHES.before(drawn.answer()))).made());
    }

    @Test
    void what_is_barred_for_a_suspect_that_counts_is_named_nowhere() {
        NAMED.noneOfEnough();
    }

    @Test
    void what_is_barred_for_a_suspect_that_counts_is_not_called_not_worth_it() {
        PASSED_OVER.noneOfEnough();
    }

    @Test
    void chemistries_that_clash_carry_a_bridge_also_where_others_lie_between() {
        BRIDGES.noneOfAtLeast(APART);
    }

    @Test
    void each_rung_says_what_follows_and_leaves_nothing_behind() {
        FOLLOWS.noneOfEnough();
    }

    @Test
    void everything_said_has_a_because_that_leads_somewhere() {
        REASONS.noneOfEnough();
    }

    @Test
    void protection_holds_what_every_suspect_that_may_harm_demands() {
        PROTECTION.noneOfEnough();
    }

    @Test
    void leaving_out_a_fact_lifts_no_bar_without_a_question_and_takes_no_protection() {
        FACTS.noneOfEnough();
    }
}
