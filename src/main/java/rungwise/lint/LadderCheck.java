package rungwise.lint;

import java.util.List;

/** One thing that can be wrong and that only the engine shows. */
interface LadderCheck {
    List<LadderCheck> ALL = List.of(new NoRung(), new ClosedSurface(), new AgeGap(), new UnusedMethod(),
            new ShadowedRule(), new ContradictingRules(), new UnbridgedClash(), new ChanceAgainstChemistry());

    String id();

    List<Finding> findings(Probes probes);
}
