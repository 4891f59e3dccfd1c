package rungwise.knowledge.check;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Chance;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.text.Texts;

/** A remover that is very unlikely to remove anything known. Chemistry kept only to be barred is meant to be so. */
final class NeededMethodCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        Collection<Contaminant> contaminants = draft.contaminants().values();
        if (!draft.isWhole(Kind.CONTAMINANT)
                || !contaminants.stream().allMatch(draft::hasItsBondClasses)) {
            return List.of(); // the contaminant that needs it may be the one that could not be read
        }
        return draft.each(Kind.METHOD, Method.class, (entry, method) -> method.kind() != MethodKind.REMOVE
                || method.family().equals("barred_chemistry") || contaminants.stream()
                .map(c -> c.chances(method)).anyMatch(c -> c.fresh() != Chance.VU || c.hardened() != Chance.VU)
                ? Stream.empty()
                : Stream.of(entry.fault("chances", Texts.said("fault.needed-by-none"),
                        Texts.said("fault.needed-by-none.do"))));
    }
}
