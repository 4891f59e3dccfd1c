package rungwise.knowledge.words;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.chemistry.Solvent;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Listed;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Form;

/**
 * What people reach for before anybody is asked, at the worst of what is sold under the word.
 *
 * @param reactive reactive groups that any of it may hold
 * @param solvent  its solvent, where it is one or is mostly one
 * @param family   family of agents with which it shares its contact, where it is plainly one of them
 */
public record EverydayProduct(String id, String name, String meaning, List<String> alsoCalled, Set<Reactive> reactive,
                              Optional<Solvent> solvent, Optional<String> family, Basis basis,
                              List<String> sources) implements Listed {
    /** What nobody can name. */
    public static final String UNTOLD = "untold";
    /** Minutes of rinsing after what nobody measured: those of the strongest agent that a shop uses. */
    private static final double RINSE_MINUTES = 3;

    public EverydayProduct {
        alsoCalled = alsoCalled == null ? List.of() : List.copyOf(alsoCalled);
        reactive = Sorted.set(reactive);
        solvent = solvent == null ? Optional.empty() : solvent;
        family = family == null ? Optional.empty() : family;
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** As an agent that was brought to the spot. */
    public Agent agent() {
        Map<Solvent, Double> solvents = solvent.map(kind -> Map.of(kind, 100.0)).orElse(Map.of());
        return new Agent(id, name, family.orElse(Agent.NONE.family()), Form.LIQUID, Optional.empty(), solvents, reactive, "", "",
                reactive.isEmpty() && solvents.isEmpty() ? 0 : RINSE_MINUTES, Set.of(), List.of(), List.of(), false, Map.of(),
                Optional.empty(), basis, sources);
    }
}
