package rungwise.knowledge.deposit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.common.Hours;
import rungwise.knowledge.common.Sorted;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;

/**
 * What is stuck.
 *
 * @param bond        how it holds while fresh and once hardened
 * @param hardens     when solvent or water has left it
 * @param marks       when a mark is to be expected beneath
 * @param nature      chemistry that rules speak of
 * @param hazards     what it does to people
 * @param holds       why no work starts at all, where that is so
 * @param emergency   what to do before anything else, while it still helps
 * @param refersTo    method id of who takes over, where the deposit and not the surface decides it
 * @param dissolvesLike material whose spheres stand for it, where those of its bond class do not fit
 * @param usualSurfaces surface ids where it is usually met
 * @param overrides   chances that differ from those of its bond class
 */
public record Contaminant(String id, String name, String what, Bond bond, Hours hardens, Hours marks, String ageing,
                          Set<Nature> nature, Set<String> hazards, List<String> ppe, Optional<String> holds,
                          Optional<Emergency> emergency, Optional<String> refersTo, Optional<String> dissolvesLike, Recognition recognise,
                          List<String> usualSurfaces, List<Override> overrides, Basis basis, List<String> sources) {
    public Contaminant {
        hardens = hardens == null ? Hours.NEVER : hardens;
        marks = marks == null ? Hours.NEVER : marks;
        nature = Sorted.set(nature);
        hazards = Sorted.set(hazards);
        ppe = ppe == null ? List.of() : List.copyOf(ppe);
        holds = holds == null ? Optional.empty() : holds;
        emergency = emergency == null ? Optional.empty() : emergency;
        refersTo = refersTo == null ? Optional.empty() : refersTo;
        dissolvesLike = dissolvesLike == null ? Optional.empty() : dissolvesLike;
        usualSurfaces = usualSurfaces == null ? List.of() : List.copyOf(usualSurfaces);
        overrides = overrides == null ? List.of() : List.copyOf(overrides);
        sources = sources == null ? List.of() : List.copyOf(sources);
    }

    /** Bond class ids. */
    public record Bond(String fresh, String hardened) {
        public boolean changes() {
            return !fresh.equals(hardened);
        }
    }

    /**
     * First aid for the surface: flush (or blot), whatever the temperature and ranking.
     *
     * @param blotted what is said where no water may run off, if that is another thing
     */
    public record Emergency(String method, double untilHours, String why, Optional<String> blotted) {
        public Emergency {
            blotted = blotted == null ? Optional.empty() : blotted;
        }

        public String whyBlotted() {
            return blotted.orElse(why);
        }
    }

    public record Recognition(String look, String feel, String place, String test, List<String> lookAlikes) {
    }

    public record Override(List<String> methods, Chance fresh, Chance hardened, String why, Basis basis,
                           List<String> sources) {
        public Override {
            sources = sources == null ? List.of() : List.copyOf(sources);
        }
    }

    public Chances chances(Method method) {
        for (Override override : overrides) {
            if (override.methods().contains(method.id())) {
                return new Chances(override.fresh(), override.hardened());
            }
        }
        return new Chances(method.chancesFor(bond.fresh()).fresh(), method.chancesFor(bond.hardened()).hardened());
    }

    /** The same with more overrides. */
    public Contaminant and(List<Override> more) {
        List<Override> all = new ArrayList<>(overrides);
        all.addAll(more);
        return new Contaminant(id, name, what, bond, hardens, marks, ageing, nature, hazards, ppe, holds, emergency,
                refersTo, dissolvesLike, recognise, usualSurfaces, all, basis, sources);
    }

    public boolean is(Nature one) {
        return nature.contains(one);
    }

    /** Pure colour or shape change: there is nothing to remove. */
    public boolean isDamage() {
        return bond.hardened().equals("damage") && bond.fresh().equals("damage");
    }
}
