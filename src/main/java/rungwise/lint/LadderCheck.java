package rungwise.lint;

import java.util.List;
import rungwise.knowledge.check.CheckId;

/** One thing that can be wrong and that only the engine shows. */
interface LadderCheck {
    List<LadderCheck> ALL = List.of(new NoRung(), new ClosedSurface(), new AgeGap(), new UnusedMethod(),
            new ShadowedRule(), new ContradictingRules(), new UnbridgedClash(), new ChanceAgainstChemistry());

    List<Finding> findings(Probes probes);

    default String id() {
        return CheckId.of(getClass());
    }
}
