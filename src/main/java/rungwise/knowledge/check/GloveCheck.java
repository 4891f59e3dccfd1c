package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.safety.GloveMaterial;
import rungwise.knowledge.safety.Permeation;
import rungwise.text.Near;
import rungwise.text.Texts;

/** A thin glove that outlasts the thick one, a chart for what nothing names, and a solvent that no chart covers. */
final class GloveCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        List<Fault> faults = new ArrayList<>(draft.each(Kind.GLOVES, Permeation.class, (entry, permeation) -> {
            OptionalDouble thin = permeation.shortest(GloveMaterial.NITRILE_THIN);
            OptionalDouble thick = permeation.shortest(GloveMaterial.NITRILE);
            return thin.isEmpty() || thick.isEmpty() || thin.getAsDouble() <= thick.getAsDouble() ? Stream.empty()
                    : Stream.of(entry.fault("charts", Texts.said("fault.thin-outlasts"), Texts.said("fault.thin-outlasts.do")));
        }));
        Set<String> held = new HashSet<>(draft.ids(Kind.SUBSTANCE));
        held.addAll(draft.ids(Kind.EXPOSURE));
        faults.addAll(draft.each(Kind.GLOVES, Permeation.class, (entry, permeation) -> permeation.holds().stream()
                .filter(id -> !held.contains(id)).map(id -> entry.fault("holds", Texts.said("fault.no-substance", "id", id),
                        Near.to(id, held)))));
        if (draft.isWhole(Kind.GLOVES)) {
            faults.addAll(Uncovered.faults(draft, Kind.GLOVES, solvent -> draft.items(Kind.GLOVES, Permeation.class)
                    .values().stream().anyMatch(p -> p.solvents().contains(solvent)), Texts.said("fault.covers-gloves")));
        }
        return faults;
    }
}
