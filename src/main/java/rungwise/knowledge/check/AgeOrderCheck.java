package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.List;
import rungwise.knowledge.common.Hours;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.text.Texts;

/** A deposit that holds otherwise once hardened says when that is, and no mark comes before it hardens. */
final class AgeOrderCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, contaminant) -> {
            List<Fault> faults = new ArrayList<>();
            Hours hardens = contaminant.hardens();
            Hours marks = contaminant.marks();
            if (contaminant.bond().changes() && hardens.isNever()) {
                faults.add(entry.fault("hardens", Texts.said("fault.no-hours"),
                        Texts.said("fault.no-hours.do")));
            }
            if (!hardens.isNever() && (marks.cool() < hardens.cool() || marks.hot() < hardens.hot())) {
                faults.add(entry.fault("marks", Texts.said("fault.marks-first"), Texts.said("fault.marks-first.do")));
            }
            return faults.stream();
        });
    }
}
