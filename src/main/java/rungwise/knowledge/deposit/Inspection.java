package rungwise.knowledge.deposit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.surface.Trait;

/**
 * A check: how signs are seen. One that may be proposed shows one of its signs, or none of them.
 *
 * @param how     what to do, in a sentence
 * @param minutes worker minutes
 * @param offered whether it is harmless and quick enough to be proposed
 * @param method  method whose agent and touch it borrows, and whose bars and limits therefore hold for it
 * @param notOn   weaknesses of a surface on which it is left alone, whatever the method's own bars say
 */
public record Inspection(String id, String name, String how, double minutes, boolean offered,
                         Optional<String> method, Set<Trait> notOn, Basis basis, List<String> sources) {
    public Inspection {
        method = method == null ? Optional.empty() : method;
        notOn = Sorted.set(notOn);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
