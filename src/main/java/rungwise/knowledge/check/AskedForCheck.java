package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Mechanism;
import rungwise.text.Near;
import rungwise.text.Texts;

/**
 * Every figure and mechanism that the program asks for by id is there, and no assumption that nothing asks for; which decisions rules alone ask
 * for is seen where the rules are.
 */
final class AskedForCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        List<Fault> faults = new ArrayList<>(held(draft, Kind.DECISION, Arrays.stream(DecisionId.values()).map(DecisionId::id).toList(), false));
        faults.addAll(held(draft, Kind.ASSUMPTION, Arrays.stream(AssumptionId.values()).map(AssumptionId::id).toList(), true));
        faults.addAll(held(draft, Kind.MECHANISM, Arrays.stream(Mechanism.values()).map(Mechanism::id).toList(), true));
        return faults;
    }

    private static List<Fault> held(Draft draft, Kind kind, List<String> asked, boolean whole) {
        if (!draft.isReadable(kind)) {
            return List.of(); // what is missing may stand in what could not be read
        }
        Set<String> there = draft.ids(kind);
        Set<String> spare = new TreeSet<>(there);
        asked.forEach(spare::remove);
        Set<String> missing = new TreeSet<>(asked);
        missing.removeAll(there);
        List<Fault> faults = new ArrayList<>();
        missing.forEach(id -> faults.add(new Fault(kind.place, id, Texts.said("fault.asked-for"),
                Near.orElse(id, spare, Texts.said("fault.add-it")))));
        draft.entries(kind).filter(e -> whole && e.hasId() && spare.contains(e.id())).forEach(e -> faults.add(e.fault("",
                Texts.said("fault.unused"), Near.orElse(e.id(), missing, Texts.said("fault.leave-it-out")))));
        return faults;
    }
}
