package rungwise.workup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.safety.AirHazard;
import rungwise.knowledge.safety.AirLimit;
import rungwise.knowledge.safety.Exposure;
import rungwise.knowledge.safety.Respirator;
import rungwise.rules.fact.Bay;
import rungwise.rules.use.Candidate;
import rungwise.rules.use.Fume;
import rungwise.science.Breathing;

/** Which gas rises from an agent that is no solvent, and which respirator is made for it. Worked out once. */
public final class Fumes {
    private final Map<String, List<Worn>> byAgent = new HashMap<>();

    private record Worn(Exposure what, double limitPpm, Respirator respirator, double maximumPpm, Optional<String> unknown) {
    }

    public Fumes(KnowledgeBase base, Gases gases) {
        base.agents().values().forEach(agent -> {
            List<Worn> worn = base.exposures().values().stream().filter(e -> isHeld(e, agent))
                    .flatMap(e -> worn(e, base, gases.whyNot(agent, e)).stream()).toList();
            if (!worn.isEmpty()) {
                byAgent.put(agent.id(), worn);
            }
        });
    }

    public List<Fume> of(Bay bay, Collection<Candidate> candidates) {
        List<Fume> fumes = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Agent agent = candidate.use().agent();
            byAgent.getOrDefault(agent.id(), List.of()).forEach(w -> fumes.add(new Fume(candidate.name(), agent.name(), bay,
                    w.what(), w.limitPpm(), w.respirator(), w.maximumPpm(), w.unknown())));
        }
        return fumes;
    }

    private static boolean isHeld(Exposure what, Agent agent) {
        return agent.dissolved().containsKey(what.id()) || !Collections.disjoint(what.reactive(), agent.reactive());
    }

    /** Only what has a limit as a gas: what is limited as a mist or dust alone does not rise by itself. */
    private static Optional<Worn> worn(Exposure what, KnowledgeBase base, Optional<String> unknown) {
        if (what.hazard() == AirHazard.VAPOUR || what.hazard() == AirHazard.DUST) {
            return Optional.empty();
        }
        OptionalDouble limit = limit(what);
        double dangerous = lowest(what, AirLimit.Over.DANGEROUS);
        return limit.isEmpty() ? Optional.empty() : base.respirators().values().stream()
                .filter(r -> r.against().contains(what.hazard()))
                .min(Comparator.comparingDouble(Respirator::factor).thenComparing(Respirator::id))
                .map(r -> new Worn(what, limit.getAsDouble(), r, Breathing.maximumUse(r.factor(), limit.getAsDouble(), dangerous), unknown));
    }

    /** The lowest of all that may be breathed; empty where it has no limit as a gas. */
    public static OptionalDouble limit(Exposure what) {
        return DoubleStream.of(lowest(what, AirLimit.Over.SHIFT), lowest(what, AirLimit.Over.CEILING),
                lowest(what, AirLimit.Over.SHORT)).filter(l -> l != Double.POSITIVE_INFINITY).min();
    }

    public static double lowest(Exposure what, AirLimit.Over over) {
        return what.lowestPpm(over).orElse(Double.POSITIVE_INFINITY);
    }
}
