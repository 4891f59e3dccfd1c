package rungwise.rules;

import java.util.List;
import rungwise.knowledge.Mechanism;
import rungwise.knowledge.Method;
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

    public boolean sucks() {
        return rungs.stream().anyMatch(u -> u.method().mechanism() == Mechanism.SUCTION);
    }

    public boolean kills() {
        return rungs.stream().anyMatch(u -> u.method().mechanism() == Mechanism.KILL);
    }

    /** Something wet goes into it: water as well as chemistry. */
    public boolean wets() {
        return rungs.stream().anyMatch(u -> !u.agent().family().equals("none") && !u.agent().family().equals("air"));
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

    public boolean clays() {
        return rungs.stream().map(Use::method).map(Method::family).anyMatch("clay"::equals);
    }

    public boolean stripsProtection() {
        return rungs.stream().anyMatch(u -> u.chemicalGrade() >= 3 || u.mechanicalGrade() >= 4);
    }
}
