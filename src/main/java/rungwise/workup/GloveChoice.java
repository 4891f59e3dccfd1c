package rungwise.workup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.safety.GloveMaterial;
import rungwise.knowledge.safety.Permeation;
import rungwise.question.Question;
import rungwise.rules.use.Candidate;
import rungwise.rules.use.HandCover;
import rungwise.science.GloveTime;

/** Picks gloves by all that an agent holds and by how long hands are in it. */
public final class GloveChoice {
    /** By agent id: for each glove the minutes that the shortest chart gives; no entry where no chart is needed. */
    private final Map<String, Charted> charted = new HashMap<>();
    private final Extents extents;
    private final double untoldMinutes;

    private record Charted(List<String> names, Map<GloveMaterial, Double> minutes) {
    }

    public GloveChoice(KnowledgeBase base) {
        extents = Extents.of(base.assumptions());
        untoldMinutes = base.assumptions().value(AssumptionId.HANDS_IN_IT);
        for (Agent agent : base.agents().values()) {
            List<Permeation> held = base.gloves().values().stream().filter(p -> p.counts(agent, base.decisions().value(DecisionId.SOLVENT_COUNTS))).toList();
            if (!held.isEmpty()) {
                Map<GloveMaterial, Double> minutes = new EnumMap<>(GloveMaterial.class);
                for (GloveMaterial glove : GloveMaterial.values()) {
                    minutes.put(glove, shortest(held, glove));
                }
                charted.put(agent.id(), new Charted(held.stream().map(Permeation::name).sorted().toList(), minutes));
            }
        }
    }

    public List<HandCover> of(Question question, Collection<Candidate> candidates) {
        List<HandCover> covers = new ArrayList<>();
        for (Candidate candidate : candidates) {
            cover(candidate, question.extent()).ifPresent(covers::add);
        }
        return covers;
    }

    private Optional<HandCover> cover(Candidate candidate, Question.Extent extent) {
        Agent agent = candidate.use().agent();
        Charted held = charted.get(agent.id());
        if (held == null) {
            return Optional.empty();
        }
        Map<GloveMaterial, Double> minutes = held.minutes();
        double contact = contact(candidate.use().method(), extent);
        GloveMaterial best = GloveMaterial.NITRILE_THIN;
        double longest = -1;
        for (Map.Entry<GloveMaterial, Double> glove : minutes.entrySet()) {
            if (glove.getValue() > longest && !GloveTime.holds(longest, contact)) {
                best = glove.getKey();
                longest = glove.getValue();
            }
        }
        return Optional.of(new HandCover(candidate.name(), agent.name(), held.names(), best, longest,
                minutes.get(GloveMaterial.NITRILE_THIN), contact));
    }

    /** Nothing charted for one of the substances is nothing to rely on. */
    private static double shortest(List<Permeation> held, GloveMaterial glove) {
        return held.stream().map(p -> p.shortest(glove)).mapToDouble(m -> m.orElse(0)).min().orElse(0);
    }

    private double contact(Method method, Question.Extent extent) {
        double work = Extents.isKnown(extent) ? extents.workMinutes(method, extent) : untoldMinutes;
        return work + method.dwell().to();
    }
}
