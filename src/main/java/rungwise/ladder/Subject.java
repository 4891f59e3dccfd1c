package rungwise.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.question.Question;
import rungwise.rules.fact.Bared;

/**
 * What a ladder is of: the deposit, or, once that is off and a mark shows, the mark. A mark is a deposit like any other, of
 * which nothing comes off but film: the same rules say what it may meet.
 *
 * @param asked    the question as it was put
 * @param question the same of the subject, with the tries as the subject saw them
 * @param suspects what the subject may be
 * @param bared    what came off and what shows beneath
 */
public record Subject(Question asked, Question question, Suspects suspects, Optional<Bared> bared) {

    /** The deposit, whatever came of the tries. */
    static Subject deposit(Question asked, Suspects suspects) {
        return new Subject(asked, asked, suspects, Optional.empty());
    }

    /** The mark that a question of a named deposit is about by now, by id. */
    public static Optional<String> mark(Question asked, KnowledgeBase base) {
        return asked.contaminant().filter(c -> !c.equals(Question.UNKNOWN)).flatMap(c -> of(asked, Suspects.named(c), base).bared())
                .map(b -> b.mark().id());
    }

    static Subject of(Question asked, Suspects suspects, KnowledgeBase base) {
        if (!asked.showsMark()) {
            return deposit(asked, suspects);
        }
        Contaminant deposit = base.contaminants().get(suspects.afterTries(asked, base).likeliest());
        if (deposit.isMark()) {
            return new Subject(asked, asked.having(asked.tried().stream().map(Telling::onMark).toList()), suspects, Optional.empty());
        }
        Contaminant mark = base.contaminants().get(deposit.leaves().orElseGet(() -> base.assumptions().word(AssumptionId.MARK_LEFT)));
        int off = asked.triesOnDeposit();
        List<Question.Tried> tries = new ArrayList<>();
        for (int i = 0; i < asked.tried().size(); i++) {
            Question.Tried tried = asked.tried().get(i);
            // what was brought, how long it stayed and what film it took still count
            tries.add(i < off ? tried.teachingNothing() : Telling.onMark(tried));
        }
        return new Subject(asked, asked.about(mark.id()).having(tries), Suspects.named(mark.id()), Optional.of(new Bared(deposit, mark)));
    }
}
