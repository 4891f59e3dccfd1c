package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;

/** Overrides that contradict each other, or age. One that repeats its bond class may stand: it says why. */
final class OverrideCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, contaminant) -> {
            List<Fault> faults = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            for (Contaminant.Override override : contaminant.overrides()) {
                override.methods().stream().filter(id -> !seen.add(id)).forEach(id -> faults.add(entry.fault(
                        "overrides", id + " is overridden twice", "keep one of the two")));
                if (!contaminant.bond().changes() && override.hardened().compareTo(override.fresh()) > 0) {
                    faults.add(entry.fault("overrides", "hardened is likelier than fresh for " + override.methods(),
                            "its bond class does not change, so age cannot help; swap or mend the two"));
                }
            }
            return faults.stream();
        });
    }
}
