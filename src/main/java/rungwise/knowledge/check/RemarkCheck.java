package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Chances;
import rungwise.text.Texts;

/** Remarks on one method twice, half a chance, or one that age betters. */
final class RemarkCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, contaminant) -> {
            List<Fault> faults = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            for (Contaminant.Remark remark : contaminant.remarks()) {
                remark.methods().stream().filter(id -> !seen.add(id)).forEach(id -> faults.add(entry.fault(
                        "remarks", Texts.said("fault.remarked-twice", "id", id), Texts.said("fault.twice.do"))));
                if (remark.fresh().isPresent() != remark.hardened().isPresent()) {
                    faults.add(entry.fault("remarks", Texts.said("fault.half-a-chance", "methods", remark.methods()),
                            Texts.said("fault.half-a-chance.do")));
                }
                if (!contaminant.bond().changes() && remark.chances().filter(Chances::gainsWithAge).isPresent()) {
                    faults.add(entry.fault("remarks", Texts.said("fault.remark-ages-well", "methods", remark.methods()),
                            Texts.said("fault.remark-ages-well.do")));
                }
            }
            return faults.stream();
        });
    }
}
