package rungwise.ladder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.Tool;
import rungwise.question.TriedAgents;
import rungwise.rules.Phase;
import rungwise.rules.RuleBook;
import rungwise.rules.said.After;
import rungwise.rules.said.Because;
import rungwise.rules.said.Clash;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusions;
import rungwise.rules.said.Finer;
import rungwise.rules.said.Replaces;
import rungwise.rules.use.Chemistry;
import rungwise.rules.use.Ignition;
import rungwise.rules.use.Meeting;
import rungwise.rules.use.Use;

/**
 * Which method comes after which, which are alike, and which agents clash: facts of the methods alone, decided once.
 *
 * @param earlierOf  by the later method, then by the earlier one
 * @param finerOf    by the coarse grade: the finer ones
 * @param replacedBy by a method: what could do for it, by chemistry or by its way of working
 */
public record Sequence(Map<String, Map<String, List<Because>>> earlierOf, Map<String, Map<String, Because>> finerOf,
                       Map<String, Map<String, List<Concluded<Replaces>>>> replacedBy, Map<String, Concluded<Clash>> clashes) {

    static Sequence of(KnowledgeBase base, RuleBook book) {
        Map<String, Map<String, List<Because>>> earlierOf = new HashMap<>();
        Map<String, Map<String, Because>> finerOf = new HashMap<>();
        Map<String, Map<String, List<Concluded<Replaces>>>> replacedBy = new HashMap<>();
        Map<String, Concluded<Clash>> clashes = new HashMap<>();
        Conclusions said = book.run(Phase.ORDER, facts(base));
        for (Concluded<After> after : said.of(After.class)) {
            earlierOf.computeIfAbsent(after.conclusion().then(), t -> new HashMap<>())
                    .computeIfAbsent(after.conclusion().first(), f -> new ArrayList<>()).add(after.because());
        }
        for (Concluded<Finer> finer : said.of(Finer.class)) {
            finerOf.computeIfAbsent(finer.conclusion().coarse(), c -> new HashMap<>())
                    .putIfAbsent(finer.conclusion().fine(), finer.because());
        }
        for (Concluded<Replaces> replaces : said.of(Replaces.class)) {
            replacedBy.computeIfAbsent(replaces.conclusion().other(), o -> new HashMap<>())
                    .computeIfAbsent(replaces.conclusion().one(), o -> new ArrayList<>()).add(replaces);
        }
        for (Concluded<Clash> clash : said.of(Clash.class)) {
            clashes.merge(clash.conclusion().first() + ">" + clash.conclusion().then(), clash,
                    (a, b) -> b.conclusion().isStricterThan(a.conclusion()) ? b : a);
        }
        return new Sequence(earlierOf, finerOf, replacedBy, clashes);
    }

    private static List<Object> facts(KnowledgeBase base) {
        List<Object> facts = new ArrayList<>(List.of(base.decisions()));
        facts.addAll(base.families().values());
        Set<Agent> agents = new HashSet<>();
        for (Method method : base.methods().values()) {
            facts.add(new Chemistry(method, base.agentOf(method), base.toolOf(method)));
        }
        base.agents().values().stream().filter(a -> !a.reactive().isEmpty()).forEach(agents::add);
        for (Agent first : agents) {
            for (Agent then : agents) {
                if (!first.equals(then)) {
                    facts.add(new Meeting(first, then));
                }
            }
        }
        // what was tried before the shop began comes first, and never after
        List<Agent> brought = TriedAgents.everyday(base);
        brought.forEach(first -> agents.forEach(then -> facts.add(new Meeting(first, then))));
        List<Tool> lighting = base.tools().values().stream().filter(Tool::ignites).toList();
        Stream.concat(agents.stream(), brought.stream()).forEach(agent -> lighting.forEach(tool -> facts.add(new Ignition(agent, tool))));
        return facts;
    }

    /** Methods that must come before this one where both are candidates, with the reasons. */
    public Map<String, List<Because>> earlierThan(String method) {
        return earlierOf.getOrDefault(method, Map.of());
    }

    /** Whether one method is the finer grade of the other's series. */
    boolean isFiner(String fine, String coarse) {
        return finerOf.getOrDefault(coarse, Map.of()).containsKey(fine);
    }

    /** Why one method could do for another. */
    List<Concluded<Replaces>> replacing(String other, String one) {
        return replacedBy.getOrDefault(one, Map.of()).getOrDefault(other, List.of());
    }

    Optional<Because> finerFirst(String fine, String coarse) {
        return Optional.ofNullable(finerOf.getOrDefault(coarse, Map.of()).get(fine));
    }

    /** What must be done between an agent and the method after it, for its own agent and for its tool. */
    public List<Concluded<Clash>> clashes(Agent first, Use then) {
        return clashes(first, then.agent(), then.tool());
    }

    public List<Concluded<Clash>> clashes(Agent first, Agent agent, Tool tool) {
        return Stream.of(agent.id(), tool.id()).map(id -> clashes.get(first.id() + ">" + id))
                .filter(Objects::nonNull).toList();
    }
}
