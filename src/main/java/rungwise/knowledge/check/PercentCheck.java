package rungwise.knowledge.check;

import java.util.List;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Agent;
import rungwise.text.Texts;

/** Shares by volume of one agent are parts of a whole. */
final class PercentCheck implements Check {
    @Override
    public List<Fault> faults(Draft draft) {
        return draft.each(Kind.AGENT, Agent.class, (entry, agent) -> {
            double sum = agent.solvents().values().stream().mapToDouble(Double::doubleValue).sum();
            return sum <= 100 ? Stream.empty() : Stream.of(entry.fault("solvents", Texts.said("fault.solvents-over-the-whole", "sum", sum),
                    Texts.said("fault.over-the-whole.do")));
        });
    }
}
