package rungwise.answer;

import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Choice;
import rungwise.ladder.Ladder;
import rungwise.ladder.Revision;
import rungwise.ladder.Suspects;
import rungwise.question.Question;
import rungwise.rules.RuleBook;
import rungwise.rules.said.Because;
import rungwise.text.Texts;
import rungwise.workup.ChemistryShare;

/** Answers questions. One advisor holds one revision of knowledge and rules and may be asked from many threads. */
public final class Advisor {
    private static final String NOTHING_KNOWN = "unknown_deposit";

    private final Revision revision;

    public Advisor(Revision revision) {
        this.revision = revision;
    }

    public Advisor(KnowledgeBase base, RuleBook book) {
        this(new Revision(base, book));
    }

    public Revision revision() {
        return revision;
    }

    public KnowledgeBase knowledge() {
        return revision.given();
    }

    public RuleBook rules() {
        return revision.book();
    }

    /** Why a method is never used on a surface, whatever the day; empty where nothing bars it. */
    public List<Because> barsOn(String surface, String method) {
        return revision.barsOn(surface, method);
    }

    /** How much of what is said of solvents rests on computation. */
    public ChemistryShare chemistry() {
        return ChemistryShare.of(revision.given());
    }

    /** Whether the order puts one method before another wherever both are candidates. */
    public boolean comesBefore(String first, String then) {
        return revision.sequence().earlierThan(then).containsKey(first);
    }

    /** Every permitted remover in its fixed order, whether worth trying or not. */
    public List<String> order(Question question) {
        return ladder(question, named(question), true, ChanceTable.PRIOR).order().stream().map(Choice::id).toList();
    }

    /** The answer with bars of those methods only that are proposed by chemistry or wanted. */
    public Answer answer(Question question) {
        return answer(question, false);
    }

    /**
     * The answer.
     *
     * @param question a question whose ids all exist, see {@link rungwise.question.QuestionReader}
     * @param all      judge every remover, also those that could never matter for this deposit
     */
    public Answer answer(Question question, boolean all) {
        return answer(question, all, ChanceTable.PRIOR);
    }

    /**
     * The answer.
     *
     * @param chances used for what is worth trying; what is permitted and in which order stays with the priors
     */
    public Answer answer(Question question, boolean all, ChanceTable chances) {
        return answer(question, named(question), all, chances);
    }

    /**
     * The answer over all that the deposit may be.
     *
     * @param suspects belief by what was seen, before any try
     */
    public Answer answer(Question question, Suspects suspects, boolean all, ChanceTable chances) {
        return new Writer(ladder(question, suspects, all, chances), all, Texts.chosen()).answer();
    }

    /** The ladder itself, for whoever weighs several of them. */
    public Ladder ladder(Question question, Suspects suspects, boolean all, ChanceTable chances) {
        return Ladder.of(revision, question, suspects, all, chances);
    }

    private static Suspects named(Question question) {
        return Suspects.named(question.contaminant().filter(c -> !c.equals(Question.UNKNOWN)).orElse(NOTHING_KNOWN));
    }
}
