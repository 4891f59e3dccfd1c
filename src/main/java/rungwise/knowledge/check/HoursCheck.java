package rungwise.knowledge.check;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.common.Hours;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.text.Texts;

/** Heat hastens; it never delays. */
final class HoursCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, contaminant) -> Stream.concat(
                look(entry, "hardens", contaminant.hardens()), look(entry, "marks", contaminant.marks())));
    }

    private static Stream<Fault> look(Entry entry, String field, Hours hours) {
        return hours.hot() <= hours.cool() ? Stream.empty() : Stream.of(entry.fault(field,
                Texts.said("fault.slower-when-hot"), Texts.said("fault.backwards.do")));
    }
}
