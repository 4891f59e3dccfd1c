package rungwise.workup;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwise.knowledge.Dissolved;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.safety.Exposure;
import rungwise.science.Acidity;
import rungwise.science.HenrysLaw;
import rungwise.text.Texts;

/**
 * Which gas stands over an agent in water, where both its strength and how readily it leaves water are known. What of it is
 * there as ions stays in the water. Worked out once for a knowledge base.
 */
public final class Gases {
    private final Map<String, List<Gas>> byAgent = new HashMap<>();

    /**
     * A gas in water.
     *
     * @param percent by weight, ions included
     * @param molar   mol/l that are no ions
     */
    public record Gas(Exposure what, double percent, double molar, HenrysLaw law) {
    }

    public Gases(KnowledgeBase base) {
        base.agents().values().forEach(agent -> {
            List<Gas> gases = of(agent, base);
            if (!gases.isEmpty()) {
                byAgent.put(agent.id(), gases);
            }
        });
    }

    public List<Gas> of(Agent agent) {
        return byAgent.getOrDefault(agent.id(), List.of());
    }

    /** Empty where it is worked out; else why it cannot be. */
    public Optional<String> whyNot(Agent agent, Exposure what) {
        if (of(agent).stream().anyMatch(g -> g.what().id().equals(what.id()))) {
            return Optional.empty();
        }
        return Optional.of(agent.dissolved().containsKey(what.id()) ? "volatilityUnpublished"
                : "strengthUnstated");
    }

    private static List<Gas> of(Agent agent, KnowledgeBase base) {
        Optional<List<Acidity.Solute>> all = Dissolved.solutes(agent, base);
        List<Gas> gases = new ArrayList<>();
        for (Map.Entry<String, Double> held : agent.dissolved().entrySet()) {
            Exposure what = base.exposures().get(held.getKey());
            Optional<Double> molar = Dissolved.molar(what, held.getValue());
            if (what.henry().isPresent() && molar.isPresent() && Fumes.limit(what).isPresent()) {
                // where something is dissolved that nobody can reckon with, all of it counts as free
                double share = all.flatMap(solutes -> Dissolved.solute(what, held.getValue(), base.decisions())
                        .map(s -> s.uncharged(Acidity.acidity(solutes)))).orElse(1.0);
                gases.add(new Gas(what, held.getValue(), molar.get() * share, what.henry().get().law()));
            }
        }
        return List.copyOf(gases);
    }
}
