package rungwise.knowledge.check;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.text.Texts;

/** A deposit that marks says by what and what it leaves; what it leaves is a mark, and a mark leaves nothing more. */
final class LeavesCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        Set<String> deposits = draft.entries(Kind.CONTAMINANT).flatMap(e -> e.item().stream()).map(Contaminant.class::cast)
                .filter(c -> !c.isMark()).map(Contaminant::id).collect(Collectors.toSet());
        return draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, one) -> {
            if (one.isMark()) {
                return one.leaves().stream().map(l -> entry.fault("leaves", Texts.said("fault.mark-leaves"), Texts.said("fault.leave-it-out")));
            }
            if (!one.marks().isNever() && one.marksBy().isEmpty()) {
                return Stream.of(entry.fault("marksBy", Texts.said("fault.no-marks-by"), Texts.said("fault.no-marks-by.do")));
            }
            if (one.leaves().isEmpty()) {
                return one.marks().isNever() && one.correction().isEmpty() ? Stream.empty()
                        : Stream.of(entry.fault("leaves", Texts.said("fault.no-leaves"), Texts.said("fault.no-leaves.do")));
            }
            return one.leaves().filter(deposits::contains).stream().map(id -> entry.fault("leaves",
                    Texts.said("fault.leaves-no-mark", "id", id), Texts.said("fault.leaves-no-mark.do")));
        });
    }
}
