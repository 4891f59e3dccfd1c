package rungwise.knowledge.deposit;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * How much a sign tells.
 *
 * @param ratio how many times likelier it is where it speaks for a contaminant than where it says nothing
 * @param seen  how often it is seen where it holds and somebody looks
 */
public record EvidenceStrength(String id, double ratio, double seen, String meaning, Basis basis,
                               List<String> sources) {
    public EvidenceStrength {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
