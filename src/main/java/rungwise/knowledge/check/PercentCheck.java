package rungwise.knowledge.check;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Agent;

/** Shares by volume of one agent are parts of a whole. */
final class PercentCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.AGENT, Agent.class, (entry, agent) -> {
            double sum = agent.solvents().values().stream().mapToDouble(Double::doubleValue).sum();
            return sum <= 100 ? Stream.empty() : Stream.of(entry.fault("solvents", "they add up to "
                    + Figures.text(sum) + " %, more than 100 %", "state percent by volume as used"));
        });
    }
}
