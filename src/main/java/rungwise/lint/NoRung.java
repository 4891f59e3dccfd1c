package rungwise.lint;

import java.util.ArrayList;
import java.util.List;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.text.Texts;

/** A deposit for which nothing is offered where it is usually met. What holds all work, or is damage, is meant so. */
final class NoRung implements LadderCheck {
    @Override
    public List<Finding> findings(Probes probes) {
        List<Finding> found = new ArrayList<>();
        for (Contaminant one : probes.asked()) {
            String file = "contaminants/" + one.id() + ".yaml";
            if (one.usualSurfaces().isEmpty()) {
                found.add(Finding.of(file, one.id(), "", Texts.said("lint.no-usual-surface"),
                        Texts.said("lint.no-usual-surface.do")));
            }
            for (String surface : one.usualSurfaces()) {
                List<Probe> here = probes.plain(one, surface);
                boolean meant = one.isDamage() || here.stream().anyMatch(p -> p.answer().hold().isPresent());
                if (!meant && !here.isEmpty() && here.stream().noneMatch(Probe::hasRung)) {
                    found.add(Finding.of(file, one.id(), surface, Texts.said("lint.no-rung", "surface", surface),
                            Texts.said("lint.no-rung.do")));
                }
            }
        }
        return found;
    }
}
