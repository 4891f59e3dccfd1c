package rungwise.rules.fact;

import java.util.Set;
import rungwise.knowledge.method.Agent;

/** Somebody on the job. */
public record Person(int level, Set<String> sensitisedTo) {
    public Person {
        sensitisedTo = Set.copyOf(sensitisedTo);
    }

    /** Sensitised to a substance the agent holds, or to its whole family. */
    public boolean reactsTo(Agent agent) {
        return sensitisedTo.contains(agent.family()) || sensitisedTo.contains(agent.id())
                || agent.sensitisers().stream().anyMatch(sensitisedTo::contains);
    }
}
