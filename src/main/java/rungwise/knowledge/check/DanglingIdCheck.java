package rungwise.knowledge.check;

import java.util.List;
import java.util.Set;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.text.Near;
import rungwise.text.Texts;

/** An id that names nothing. */
final class DanglingIdCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return Reference.ALL.stream().flatMap(reference -> {
            Set<String> known = draft.ids(reference.to());
            return draft.entries(reference.from()).flatMap(entry -> reference.namedBy(entry).distinct()
                    .filter(id -> !known.contains(id)).map(id -> entry.fault(reference.field(),
                            Texts.said("fault.does-not-exist", "id", id), Near.to(id, known))));
        }).toList();
    }
}
