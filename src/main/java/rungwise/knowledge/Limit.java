package rungwise.knowledge;

import java.util.List;

/**
 * How a surface takes one kind of solvent.
 *
 * @param maxPercent strength by volume that it still takes; 100 where the column is not limited
 * @param why        the chemistry beneath, in a sentence
 */
public record Limit(Verdict verdict, double maxPercent, String why, List<String> sources) {
    public Limit {
        maxPercent = maxPercent == 0 ? 100 : maxPercent;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    public Limit stricter(Limit other) {
        Limit worse = verdict.compareTo(other.verdict) >= 0 ? this : other;
        return new Limit(worse.verdict, Math.min(maxPercent, other.maxPercent), worse.why, worse.sources);
    }
}
