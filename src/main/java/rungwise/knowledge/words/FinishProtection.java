package rungwise.knowledge.words;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.common.Listed;

/**
 * What lies on the paint.
 *
 * @param treatAs surface id whose delicacy paint under it has
 */
public record FinishProtection(String id, String name, String meaning, List<String> alsoCalled,
                               Optional<String> treatAs) implements Listed {
    public FinishProtection {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
        treatAs = treatAs == null ? Optional.empty() : treatAs;
    }
}
