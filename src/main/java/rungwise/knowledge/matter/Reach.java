package rungwise.knowledge.matter;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * How far a role of a method reaches into each form of a deposit. Where a form is not named the method does nothing to it,
 * whatever its agent takes.
 */
public record Reach(String id, String says, List<DepositForm> full, List<DepositForm> half, List<DepositForm> little, Basis basis,
                    List<String> sources) {
    public Reach {
        full = full == null ? List.of() : List.copyOf(full);
        half = half == null ? List.of() : List.copyOf(half);
        little = little == null ? List.of() : List.copyOf(little);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    public boolean isInto(DepositForm form) {
        return full.contains(form) || half.contains(form) || little.contains(form);
    }
}
