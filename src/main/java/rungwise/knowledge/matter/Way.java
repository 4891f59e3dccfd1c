package rungwise.knowledge.matter;

import java.util.List;
import rungwise.knowledge.common.Basis;

/** A way in which a method acts on what a deposit is made of: an agent, or what a tool does. */
public record Way(String id, String says, Basis basis, List<String> sources) {
    public Way {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
