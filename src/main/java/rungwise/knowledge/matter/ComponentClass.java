package rungwise.knowledge.matter;

import java.util.List;
import rungwise.knowledge.common.Basis;

/**
 * Components that are thought of together.
 *
 * @param ways that are thought of at all: what water, soap or enzyme takes gets no solvent
 */
public record ComponentClass(String id, String says, List<String> ways, Basis basis, List<String> sources) {
    public ComponentClass {
        ways = ways == null ? List.of() : List.copyOf(ways);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
