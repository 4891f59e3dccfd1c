package rungwise.knowledge.check;

import java.util.List;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;

/** A file named otherwise than its entry is not found by whoever looks for it. */
final class FileNameCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.entries().stream().filter(e -> e.kind().isOnePerFile() && e.hasId())
                .filter(e -> !e.file().equals(e.kind().place + e.id() + ".yaml"))
                .map(e -> e.fault("id", "the file is not named as its id",
                        "rename the file to " + e.id() + ".yaml, or mend the id")).toList();
    }
}
