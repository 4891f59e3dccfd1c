package rungwise.lint;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import rungwise.answer.Answer;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusion;
import rungwise.rules.said.Conclusions;
import rungwise.text.Texts;

/**
 * One reference question with its answer.
 *
 * @param heard what the rules concluded on the way, without what they had said of the surface before
 */
record Probe(Contaminant contaminant, String surface, Age age, Answer answer, List<Concluded<? extends Conclusion>> heard) {
    /** How old the deposit is, against the hours until it hardens on a cool panel. */
    enum Age {
        FRESH(0.25), TURNING(1), HARDENED(4);

        final double share;

        Age(double share) {
            this.share = share;
        }

        String words() {
            return this == TURNING ? Texts.said("lint.half-hardened") : name().toLowerCase(Locale.ROOT);
        }
    }

    /** Rungs, and what is gentler but slow. */
    Stream<Answer.Rung> rungs() {
        return Stream.concat(answer.rungs().stream(), answer.alternatives().stream().map(Answer.Alternative::rung));
    }

    boolean hasRung() {
        return rungs().findAny().isPresent();
    }

    <C extends Conclusion> List<Concluded<C>> heard(Class<C> kind) {
        return new Conclusions(heard).of(kind);
    }
}
