package rungwise.knowledge.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.knowledge.chemistry.Polymer;
import rungwise.knowledge.chemistry.Solute;
import rungwise.knowledge.deposit.BondClass;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Entry;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Mechanism;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.knowledge.surface.Surface;
import rungwise.text.Texts;

/** A sphere of a deposit says nothing of a surface, nor the other way round; what only neutralises removes nothing. */
final class RoleCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        Map<String, Solute> solutes = draft.items(Kind.SOLUTE, Solute.class);
        return Stream.of(
                draft.each(Kind.METHOD, Method.class, (entry, method) -> method.kind() == MethodKind.REMOVE
                        && method.mechanism() == Mechanism.NEUTRALISE ? Stream.of(entry.fault("kind",
                        Texts.said("fault.neutraliser"), Texts.said("fault.neutraliser.do"))) : Stream.empty()),
                draft.each(Kind.BOND_CLASS, BondClass.class, (entry, bond) -> soil(entry, bond.dissolvesLike(), solutes)),
                draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, what) -> soil(entry, what.dissolvesLike(), solutes)),
                draft.each(Kind.SURFACE, Surface.class, (entry, surface) -> surface.polymers().stream()
                        .map(Polymer::sphere).filter(id -> solutes.containsKey(id) && !solutes.get(id).isSurface())
                        .map(id -> entry.fault("polymers", Texts.said("fault.measured-as-deposit", "id", id),
                                Texts.said("fault.measured-as-deposit.do"))))).flatMap(List::stream).toList();
    }

    private static Stream<Fault> soil(Entry entry, Optional<String> named, Map<String, Solute> solutes) {
        return named.filter(id -> solutes.containsKey(id) && !solutes.get(id).isSoil())
                .map(id -> entry.fault("dissolvesLike", Texts.said("fault.measured-on-surface", "id", id),
                        Texts.said("fault.measured-on-surface.do"))).stream();
    }
}
