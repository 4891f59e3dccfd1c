package rungwise.diagnosis;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.surface.Surface;
import rungwise.names.Whereabouts;
import rungwise.question.Question;

/** What is believed before anything was seen: how often a deposit is met, and how often on such a surface. */
final class Beforehand {
    private final KnowledgeBase base;
    private final Map<String, Map<String, Double>> onSurface = new TreeMap<>();
    private final Map<String, String> sides = new TreeMap<>();
    private final Map<String, Map<String, Double>> onSide = new TreeMap<>();
    private final Map<String, Double> met = new TreeMap<>();

    Beforehand(KnowledgeBase base) {
        this.base = base;
        base.surfaces().keySet().forEach(s -> new Whereabouts(List.of(s), Optional.empty(), base).side().ifPresent(side -> sides.put(s, side)));
        base.contaminants().forEach((id, one) -> {
            Map<String, Double> shares = surfaces(one.usualSurfaces());
            Map<String, Double> bySide = new TreeMap<>();
            sides.forEach((surface, side) -> bySide.merge(side, shares.get(surface), Double::sum));
            onSurface.put(id, shares);
            onSide.put(id, bySide);
            met.put(id, base.signs().frequencyOf(id).weight());
        });
    }

    /** How often a deposit is met on each surface, of all its spots. */
    private Map<String, Double> surfaces(List<String> usual) {
        double own = base.decisions().value(DecisionId.ON_ITS_SURFACE);
        double such = base.decisions().value(DecisionId.ON_SUCH_A_SURFACE);
        Map<String, Double> shares = new TreeMap<>();
        for (Surface surface : base.surfaces().values()) {
            double any = 1.0 / base.surfaces().size();
            double alike = usual.stream().filter(u -> base.surfaces().get(u).kind() == surface.kind()).count() / Math.max(1.0, usual.size())
                    / base.surfaces().values().stream().filter(s -> s.kind() == surface.kind()).count();
            double exact = usual.contains(surface.id()) ? 1.0 / usual.size() : 0;
            shares.put(surface.id(), usual.isEmpty() ? any : own * exact + such * alike + (1 - own - such) * any);
        }
        return shares;
    }

    /** The side of the vehicle on which the surface is met; empty where it is met on both, or unknown. */
    Optional<String> side(Question question) {
        List<String> all = question.surface().stream().map(s -> sides.getOrDefault(s, "")).distinct().toList();
        return all.size() == 1 && !all.get(0).isEmpty() ? Optional.of(all.get(0)) : Optional.empty();
    }

    /**
     * How likely each deposit is beforehand, against the others.
     *
     * @param placed whether a place was told: that already says on which side it is, so that the surface does not say it again
     */
    Map<String, Double> weights(Question question, boolean placed) {
        List<String> named = question.surface().stream().filter(base.surfaces()::containsKey).distinct().toList();
        if (named.isEmpty() || question.surface().contains(Question.UNKNOWN)) {
            return met;
        }
        Optional<String> side = placed ? side(question) : Optional.empty();
        Map<String, Double> weights = new TreeMap<>();
        met.forEach((id, weight) -> {
            double here = named.stream().mapToDouble(onSurface.get(id)::get).average().orElseThrow();
            weights.put(id, weight * here / side.map(onSide.get(id)::get).orElse(1.0));
        });
        return weights;
    }
}
