package rungwise.knowledge.check;

import java.util.List;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.text.Texts;

/** A file named otherwise than its entry is not found by whoever looks for it. */
final class FileNameCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.entries().stream().filter(e -> e.kind().isOnePerFile() && e.hasId())
                .filter(e -> !e.file().equals(e.kind().place + e.id() + ".yaml"))
                .map(e -> e.fault("id", Texts.said("fault.file-name"),
                        Texts.said("fault.file-name.do", "id", e.id()))).toList();
    }
}
