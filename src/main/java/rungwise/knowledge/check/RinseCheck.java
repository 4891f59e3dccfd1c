package rungwise.knowledge.check;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.draft.Kind;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.text.Texts;

/** An agent that leaves a residue is rinsed or washed off at once. */
final class RinseCheck implements Check {
    private static final Set<String> RINSING = Set.of("water", "wash");

    @Override
    public List<Fault> faults(Draft draft) {
        Map<String, Agent> agents = draft.items(Kind.AGENT, Agent.class);
        Map<String, Method> methods = draft.methods();
        return draft.each(Kind.METHOD, Method.class, (entry, method) -> {
            Agent agent = agents.get(method.agent());
            boolean leaves = agent != null && agent.residueRinse() > 0 && method.kind() == MethodKind.REMOVE;
            // a follower that could not be read may be the rinse
            boolean rinsed = method.afterwards().stream().map(methods::get)
                    .anyMatch(m -> m == null || RINSING.contains(m.family()));
            return leaves && !rinsed ? Stream.of(entry.fault("afterwards",
                    Texts.said("fault.not-rinsed"), Texts.said("fault.not-rinsed.do"))) : Stream.empty();
        });
    }
}
