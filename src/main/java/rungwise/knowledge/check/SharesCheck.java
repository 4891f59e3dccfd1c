package rungwise.knowledge.check;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.matter.MadeOf;
import rungwise.text.Texts;

/** What a deposit is made of makes it up, and each component stands there once. */
final class SharesCheck implements Check {
    private static final double ABOUT = 0.03;

    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.CONTAMINANT, Contaminant.class, (entry, contaminant) -> contaminant.madeOf().stream()
                .flatMap(m -> Stream.of(Map.entry("madeOf/fresh", m.fresh()), Map.entry("madeOf/old", m.old()))
                        .limit(m.old().equals(m.fresh()) ? 1 : 2)).flatMap(parts -> {
                    double sum = parts.getValue().stream().mapToDouble(MadeOf.Part::share).sum();
                    long distinct = parts.getValue().stream().map(MadeOf.Part::component).distinct().count();
                    return Stream.concat(Math.abs(sum - 1) <= ABOUT ? Stream.empty() : Stream.of(entry.fault(parts.getKey(),
                            Texts.said("fault.shares", "sum", Figures.thousandths(sum)), Texts.said("fault.shares.do"))),
                            distinct == parts.getValue().size() ? Stream.empty() : Stream.of(entry.fault(parts.getKey(),
                                    Texts.said("fault.component-twice"), Texts.said("fault.component-twice.do"))));
                }));
    }
}
