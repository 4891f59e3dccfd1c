package rungwise.knowledge.method;

import java.util.List;
import java.util.Optional;
import rungwise.knowledge.common.Basis;

/**
 * A group of methods that are one chemistry or one abrasive series.
 *
 * @param contactCapMinutes wet contact per spot and day; empty where no cap is known
 * @param graded            a series from fine to coarse: a coarser member only after the finer ones
 */
public record Family(String id, String name, Optional<Double> contactCapMinutes, boolean graded, Basis basis,
                     List<String> sources) {
    public Family {
        contactCapMinutes = contactCapMinutes == null ? Optional.empty() : contactCapMinutes;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
