package rungwise.knowledge.safety;

import java.util.List;
import java.util.Set;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Sorted;

/**
 * A hazard statement of the label and the safety data sheet, and what follows from it at work.
 *
 * @param reactive   reactive groups that the statement gives away
 * @param corrosive  acid or alkali, as the pH tells
 * @param sensitiser whether a sensitised worker may react to what carries it
 */
public record HazardStatement(String id, String meaning, Set<Reactive> reactive, boolean corrosive, boolean sensitiser,
                       List<String> ppe, String risk, Basis basis, List<String> sources) {
    public HazardStatement {
        reactive = Sorted.set(reactive);
        ppe = ppe == null ? List.of() : List.copyOf(ppe);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
