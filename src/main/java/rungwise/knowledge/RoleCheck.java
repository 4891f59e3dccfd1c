package rungwise.knowledge;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A sphere of a deposit says nothing of a surface, nor the other way round. */
final class RoleCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        Map<String, Solute> solutes = draft.items(Kind.SOLUTE, Solute.class);
        return Stream.of(
                draft.each(Kind.BOND_CLASS, BondClass.class, (entry, bond) -> soil(entry, bond.dissolvesLike(), solutes)),
                draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, what) -> soil(entry, what.dissolvesLike(), solutes)),
                draft.each(Kind.SURFACE, Surface.class, (entry, surface) -> surface.polymers().stream()
                        .map(Polymer::sphere).filter(id -> solutes.containsKey(id) && !solutes.get(id).isSurface())
                        .map(id -> entry.fault("polymers", id + " was measured as a deposit",
                                "name one that was measured on finished material")))).flatMap(List::stream).toList();
    }

    private static Stream<Fault> soil(Entry entry, Optional<String> named, Map<String, Solute> solutes) {
        return named.filter(id -> solutes.containsKey(id) && !solutes.get(id).isSoil())
                .map(id -> entry.fault("dissolvesLike", id + " was measured on a finished surface",
                        "name one that was measured as a deposit")).stream();
    }
}
