package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.text.Texts;

/** Overrides that contradict each other, or age. One that repeats its bond class may stand: it says why. */
final class OverrideCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, contaminant) -> {
            List<Fault> faults = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            for (Contaminant.Override override : contaminant.overrides()) {
                override.methods().stream().filter(id -> !seen.add(id)).forEach(id -> faults.add(entry.fault(
                        "overrides", Texts.said("fault.overridden-twice", "id", id), Texts.said("fault.twice.do"))));
                if (!contaminant.bond().changes() && override.hardened().compareTo(override.fresh()) > 0) {
                    faults.add(entry.fault("overrides", Texts.said("fault.overrides-age-well", "methods", override.methods()),
                            Texts.said("fault.overrides-age-well.do")));
                }
            }
            return faults.stream();
        });
    }
}
