package rungwise.workup;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Substance;
import rungwise.knowledge.method.Agent;
import rungwise.science.Hansen;
import rungwise.science.Solubility;

/**
 * The organic part of an agent. Water is no part of it: it lowers the strength, not what the rest dissolves.
 *
 * @param shares substances with their percent by volume as used, the largest first
 */
public record Organics(List<Share> shares) {
    public record Share(Substance substance, double percent) {
    }

    public static Organics of(Agent agent, KnowledgeBase base) {
        return new Organics(agent.composition().entrySet().stream()
                .map((Map.Entry<String, Double> e) -> new Share(base.substances().get(e.getKey()), e.getValue()))
                .filter(s -> s.substance().isOrganic())
                .sorted(Comparator.comparingDouble((Share s) -> -s.percent()).thenComparing(s -> s.substance().id()))
                .toList());
    }

    public double percent() {
        return shares.stream().mapToDouble(Share::percent).sum();
    }

    public Hansen blend() {
        return Solubility.blend(shares.stream()
                .map(s -> new Solubility.Part(s.substance().hansen(), s.percent())).toList());
    }

    /** Whether its molecules are too large to enter a polymer soon. */
    public boolean isSlow() {
        double volume = shares.stream().mapToDouble(s -> s.percent() * s.substance().molarVolumeCm3()).sum();
        return volume / percent() > Solubility.SLOW_FROM_CM3_PER_MOL;
    }

    /** What there is so much of, on its own. */
    public List<Share> from(double percent) {
        return shares.stream().filter(s -> s.percent() >= percent).toList();
    }
}
