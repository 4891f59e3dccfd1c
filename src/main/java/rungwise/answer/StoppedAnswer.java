package rungwise.answer;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwise.question.FactUse;
import rungwise.question.Question;

/**
 * All work ends here for now: a hazard, first aid while minutes count, or harm done. Nothing else can stand in it.
 *
 * @param call who takes over, where somebody does
 * @param firstAid what to do while minutes count, and what follows
 */
public record StoppedAnswer(String revision, Question question, FactUse facts, List<Assumed> assumed, Optional<Held> hold, Next next,
                            Optional<WayOut> call, Optional<FirstAid> firstAid, Map<String, Explained> reasons) implements Answer {
    StoppedAnswer with(Map<String, Explained> collected) {
        return new StoppedAnswer(revision, question, facts, assumed, hold, next, call, firstAid, collected);
    }
}
