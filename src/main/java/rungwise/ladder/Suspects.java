package rungwise.ladder;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import rungwise.knowledge.KnowledgeBase;
import rungwise.question.Question;

/**
 * What a deposit is believed to be, probability by contaminant, the likeliest first. A named deposit is a belief of one. What
 * is believed not at all is left out.
 */
public record Suspects(Map<String, Double> belief) {
    public Suspects {
        Map<String, Double> sorted = new LinkedHashMap<>();
        belief.entrySet().stream().filter(e -> e.getValue() > 0).sorted(Map.Entry.<String, Double>comparingByValue().reversed()
                .thenComparing(Map.Entry.comparingByKey(Comparator.naturalOrder()))).forEach(e -> sorted.put(e.getKey(), e.getValue()));
        if (sorted.isEmpty()) {
            throw new IllegalArgumentException("a deposit is believed to be something");
        }
        belief = java.util.Collections.unmodifiableMap(sorted);
    }

    public static Suspects named(String contaminant) {
        return new Suspects(Map.of(contaminant, 1.0));
    }

    /** The same after every try of the question, normalised. */
    public Suspects afterTries(Question question, KnowledgeBase base) {
        if (Telling.tried(question).findAny().isEmpty()) {
            return this;
        }
        Map<String, Double> after = new LinkedHashMap<>();
        belief.forEach((id, weight) -> after.put(id, weight * Telling.likelihood(base.contaminants().get(id), question, base)));
        double sum = after.values().stream().mapToDouble(w -> w).sum();
        after.replaceAll((id, weight) -> weight / sum);
        return new Suspects(after);
    }

    public String likeliest() {
        return belief.keySet().iterator().next();
    }
}
