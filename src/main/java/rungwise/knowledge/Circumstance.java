package rungwise.knowledge;

import java.util.List;
import rungwise.knowledge.common.Basis;

/** Something seen, smelt or happened that stops work before it starts. */
public record Circumstance(String id, String name, String doFirst, String until, Basis basis, List<String> sources) {
    public Circumstance {
        sources = sources == null ? List.of() : List.copyOf(sources);
    }
}
