package rungwise.ladder;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.surface.Surface;
import rungwise.question.QuestionReader;
import rungwise.rules.RuleBook;
import rungwise.rules.said.Because;
import rungwise.rules.said.Concluded;
import rungwise.workup.ComputedChances;
import rungwise.workup.Worked;

/**
 * One revision of knowledge and rules, with what follows from these alone: chances by chemistry, verdicts by surface, the
 * sequence of methods. It may be asked from many threads.
 */
public final class Revision {
    private final KnowledgeBase given;
    private final ComputedChances computed;
    private final RuleBook book;
    private final Standing standing;
    private final Sequence sequence;
    private final Worked worked;

    /** Works everything out now. */
    public Revision(KnowledgeBase given, RuleBook book) {
        this(given, ComputedChances.of(given), book, new Standing(given, book), Sequence.of(given, book));
    }

    /** With what was worked out before. */
    public Revision(KnowledgeBase given, ComputedChances computed, RuleBook book, Standing standing, Sequence sequence) {
        this.given = given;
        this.computed = computed;
        this.book = book;
        this.standing = standing;
        this.sequence = sequence;
        this.worked = new Worked(given);
    }

    /** What is known, as its files say it. */
    public KnowledgeBase given() {
        return given;
    }

    /** What is known, with the chances that chemistry filled in. */
    public KnowledgeBase base() {
        return computed.base();
    }

    public ComputedChances computed() {
        return computed;
    }

    public RuleBook book() {
        return book;
    }

    public Sequence sequence() {
        return sequence;
    }

    public Worked worked() {
        return worked;
    }

    public Standing standing() {
        return standing;
    }

    /** Why a method is never used on a surface, whatever the day; empty where nothing bars it. */
    public List<Because> barsOn(String surface, String method) {
        return standing.of(base().surfaces().get(surface), method).bars().stream().map(Concluded::because).distinct().toList();
    }

    public Map<String, Verdict> standingOn(Surface surface) {
        return standing.on(surface);
    }

    /** A surface as it is, and as facts that nobody told could make it. */
    public List<Surface> wherever(Surface surface) {
        Situation situation = Situation.of(this, Subject.deposit(QuestionReader.read(Mappers.question()
                .readTree("surface: " + surface.id()), base()), Suspects.named(Situation.NOTHING_KNOWN)));
        return Stream.concat(Stream.of(surface, situation.surface()), situation.mights().stream().map(Situation.Might::surface))
                .distinct().toList();
    }
}
