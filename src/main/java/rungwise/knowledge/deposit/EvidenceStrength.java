package rungwise.knowledge.deposit;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * How much a sign tells that is no word of a kind.
 *
 * @param right   how often it is seen where it holds and somebody looks
 * @param wrong   how often it is seen on anything else
 * @param against how often it is seen on what it speaks against
 */
public record EvidenceStrength(String id, double right, double wrong, double against, String meaning, Basis basis,
                               List<String> sources) {
    public EvidenceStrength {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** How many times likelier it is where it holds than on anything else. */
    public double ratio() {
        return right / wrong;
    }
}
