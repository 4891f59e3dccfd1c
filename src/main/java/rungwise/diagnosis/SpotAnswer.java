package rungwise.diagnosis;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Optional;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.compare.WhatIf;
import rungwise.ladder.ChanceTable;
import rungwise.question.Question;

/**
 * The answer to a ladder question, over all that the deposit may be where only signs of it are given.
 *
 * @param suspects what it may be; empty where the contaminant was named
 * @param whatIf   facts that would change the next step; empty where nobody asked
 */
public record SpotAnswer(@JsonUnwrapped Answer answer, Optional<List<Identification.Suspect>> suspects,
                         Optional<List<WhatIf.Change>> whatIf) {

    /**
     * Answers.
     *
     * @param all    judge every remover
     * @param whatIf also try the facts that could be otherwise
     * @param chances what the shop's log teaches
     */
    public static SpotAnswer to(Advisor advisor, Identifier identifier, Question question, boolean all,
                                boolean whatIf, ChanceTable chances) {
        boolean spot = identifier.canStandFor(question);
        Answer answer = spot ? identifier.ladder(question, all, chances) : advisor.answer(question, all, chances);
        return new SpotAnswer(answer, spot ? Optional.of(identifier.suspects(question)) : Optional.empty(),
                whatIf ? Optional.of(WhatIf.changes(question, answer, q -> spot ? identifier.ladder(q, false, chances)
                        : advisor.answer(q, false, chances), advisor.knowledge()))
                        : Optional.empty());
    }
}
