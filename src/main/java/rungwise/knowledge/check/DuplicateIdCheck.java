package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Fault;
import rungwise.text.Texts;

/** Two entries of a kind with one id: which of them counts would hang on the order of files. */
final class DuplicateIdCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        List<Fault> faults = new ArrayList<>();
        Map<String, String> fileOf = new HashMap<>();
        for (Entry entry : draft.entries().stream().filter(Entry::hasId).toList()) {
            String first = fileOf.putIfAbsent(entry.kind() + " " + entry.id(), entry.file());
            if (first != null) {
                faults.add(entry.fault("", Texts.said("fault.id-twice", "file", first), Texts.said("fault.id-twice.do")));
            }
        }
        return faults;
    }
}
