package rungwise.knowledge.words;

import java.util.List;
import java.util.Set;
import rungwise.knowledge.common.Listed;
import rungwise.knowledge.common.Sorted;

/**
 * What people become sensitised to, with everything that counts as it.
 *
 * @param substances substances, or what is dissolved, that are it
 * @param families   families of agents that hold it, whatever a single one of them says
 */
public record Sensitiser(String id, String name, String meaning, List<String> alsoCalled, Set<String> substances,
                         Set<String> families) implements Listed {
    public Sensitiser {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
        substances = Sorted.set(substances);
        families = Sorted.set(families);
    }
}
