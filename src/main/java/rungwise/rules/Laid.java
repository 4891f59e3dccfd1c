package rungwise.rules;

import java.util.List;
import rungwise.knowledge.Mechanism;
import rungwise.knowledge.Method;
import rungwise.knowledge.Reactive;
import rungwise.knowledge.SolventColumn;
import rungwise.knowledge.Surface;
import rungwise.knowledge.Trait;

/** The rungs that were chosen, seen as a whole. */
public record Laid(List<Use> rungs, Surface surface, Deposit deposit) {
    public Laid {
        rungs = List.copyOf(rungs);
    }

    public boolean isEmpty() {
        return rungs.isEmpty();
    }

    /** Inside the vehicle, where things are wiped and sucked and not rinsed. */
    public boolean isInside() {
        return surface.is(Trait.NO_RUNNING_WATER);
    }

    /** Glass, lenses and screens: a vacuum head is kept off them. */
    public boolean isSeenThrough() {
        return surface.is(Trait.SEEN_THROUGH);
    }

    /** Whether it takes the solvent that carries a wax. */
    public boolean bearsWaxSolvent() {
        return !surface.limit(SolventColumn.ALIPHATIC).verdict().forbids();
    }

    public boolean sucks() {
        return rungs.stream().anyMatch(u -> u.method().mechanism() == Mechanism.SUCTION);
    }

    public boolean kills() {
        return rungs.stream().anyMatch(u -> u.method().mechanism() == Mechanism.KILL);
    }

    /** Something wet goes into it: water as well as chemistry. */
    public boolean wets() {
        return rungs.stream().anyMatch(u -> u.agent().isWet());
    }

    public boolean touches() {
        return rungs.stream().anyMatch(u -> u.mechanicalGrade() >= 2);
    }

    public boolean wetsWithChemistry() {
        return rungs.stream().anyMatch(Use::isWetChemistry);
    }

    public boolean needsDryPanel() {
        return rungs.stream().anyMatch(u -> u.agent().isSolvent());
    }

    public boolean abrades() {
        return rungs.stream().map(Use::tool).anyMatch(t -> t.kind().abrades());
    }

    /** Leaves an oily or greasy film: polish, clay lubricant, softening oil. */
    public boolean leavesOil() {
        return abrades() || clays() || rungs.stream().anyMatch(u -> u.holds(Reactive.OILY));
    }

    public boolean leavesVapour() {
        return rungs.stream().anyMatch(u -> u.holds(Reactive.FLAMMABLE));
    }

    public boolean clays() {
        return rungs.stream().map(Use::method).map(Method::family).anyMatch("clay"::equals);
    }

    public boolean stripsProtection() {
        return rungs.stream().anyMatch(u -> u.chemicalGrade() >= 3 || u.mechanicalGrade() >= 4);
    }
}
