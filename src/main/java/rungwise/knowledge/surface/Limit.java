package rungwise.knowledge.surface;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.common.Basis;

/**
 * How a surface takes one kind of solvent.
 *
 * @param maxPercent strength by volume that it still takes; 100 where the column is not limited
 * @param why        the chemistry beneath, in a sentence
 * @param basis      where this limit comes from; empty = as the surface
 */
public record Limit(Verdict verdict, double maxPercent, String why, Optional<Basis> basis, List<String> sources) {
    public Limit {
        basis = basis == null ? Optional.empty() : basis;
        maxPercent = maxPercent == 0 ? 100 : maxPercent;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    public Limit stricter(Limit other) {
        Limit worse = verdict.compareTo(other.verdict) >= 0 ? this : other;
        return new Limit(worse.verdict, Math.min(maxPercent, other.maxPercent), worse.why, worse.basis, worse.sources);
    }
}
