package rungwise.knowledge.product;

import java.util.List;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Listed;

/**
 * What a label says that a product is for.
 *
 * @param readings what is sold under the word, from the gentlest to the harshest; none where nobody knows
 */
public record ProductFunction(String id, String name, String meaning, List<String> alsoCalled, List<LabelReading> readings,
                              Basis basis, List<String> sources) implements Listed {
    public ProductFunction {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
        readings = readings == null ? List.of() : List.copyOf(readings);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
