package rungwise.knowledge.check;

import java.util.ArrayList;
import java.util.List;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.text.Texts;

/** Handbook figures of one substance that contradict each other. */
final class SubstanceCheck implements Check {
    /** Constants from one handbook meet the boiling point of another within this. */
    private static final double BOILING_WITHIN_K = 2;

    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.SUBSTANCE, Substance.class, (entry, substance) -> {
            List<Fault> faults = new ArrayList<>();
            substance.antoine().ifPresent(antoine -> substance.boilingC().filter(boiling ->
                    Math.abs(antoine.boilingC() - boiling) > BOILING_WITHIN_K).ifPresent(boiling -> faults.add(
                            entry.fault("antoine", Texts.said("fault.boils-elsewhere", "computed",
                                    Math.round(antoine.boilingC() * 10) / 10.0, "stated", boiling), Texts.said("fault.boils-elsewhere.do")))));
            substance.lowerFlammablePercent().ifPresent(low -> substance.upperFlammablePercent()
                    .filter(high -> high <= low).ifPresent(high -> faults.add(entry.fault("upperFlammablePercent",
                            Texts.said("fault.not-above"), Texts.said("fault.backwards.do")))));
            double parts = substance.evaporatesAs().values().stream().mapToDouble(Double::doubleValue).sum();
            if (!substance.evaporatesAs().isEmpty() && Math.abs(parts - 1) > 0.001) {
                faults.add(entry.fault("evaporatesAs", Texts.said("fault.mole-fractions", "parts", parts),
                        Texts.said("fault.mole-fractions.do")));
            }
            return faults.stream();
        });
    }
}
