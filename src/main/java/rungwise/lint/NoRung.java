package rungwise.lint;

import java.util.ArrayList;
import java.util.List;
import rungwise.knowledge.deposit.Contaminant;

/** A deposit for which nothing is offered where it is usually met. What holds all work, or is damage, is meant so. */
final class NoRung implements LadderCheck {
    @Override
    public List<Finding> findings(Probes probes) {
        List<Finding> found = new ArrayList<>();
        for (Contaminant one : probes.asked()) {
            String file = "contaminants/" + one.id() + ".yaml";
            if (one.usualSurfaces().isEmpty()) {
                found.add(Finding.of(file, one.id(), "", "it does not say on which surfaces it is usually met",
                        "name them as usualSurfaces, so that its ladder can be looked at"));
            }
            for (String surface : one.usualSurfaces()) {
                List<Probe> here = probes.plain(one, surface);
                boolean meant = one.isDamage() || here.stream().anyMatch(p -> p.answer().hold().isPresent());
                if (!meant && !here.isEmpty() && here.stream().noneMatch(Probe::hasRung)) {
                    found.add(Finding.of(file, one.id(), surface, "nothing is offered for it on " + surface
                                    + " at any age, and it neither holds work nor is damage",
                            "give a method that fits a chance, name the surface where it is really met, or waive it"));
                }
            }
        }
        return found;
    }
}
