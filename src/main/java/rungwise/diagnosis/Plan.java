package rungwise.diagnosis;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.ladder.Ladder;

/**
 * What somebody would do who knew that this deposit lies there, and what anything else would cost on it.
 *
 * @param held    whether all work is held
 * @param weights belief in each state in which it may lie
 * @param chances of every remover in each of these states
 * @param barred  what must not be done on it, with the reason
 */
record Plan(String deposit, boolean held, List<Step> steps, double[] weights, Map<String, double[]> chances, Map<String, String> barred) {
    /**
     * A rung.
     *
     * @param cost worker minutes that trying it is worth, marks and film included
     */
    record Step(String method, String family, double cost) {
    }

    static Plan of(String deposit, Ladder ladder) {
        Map<String, String> barred = new LinkedHashMap<>();
        ladder.verdicts().all().forEach((id, verdict) -> verdict.bars().stream().filter(b -> !b.conclusion().isSpent()).findFirst()
                .ifPresent(b -> barred.put(id, b.because().says())));
        boolean held = ladder.situation().isStopped();
        List<Step> steps = held ? List.of() : ladder.rungs().stream().map(r -> new Step(r.id(), r.method().family(), r.cost())).toList();
        return new Plan(deposit, held, steps, ladder.weights(), ladder.chances(), barred);
    }

    /** Expected worker minutes of steps on this deposit: a step that it forbids does harm, and what nothing takes off is handed over. */
    double minutes(List<Step> steps, Decisions decisions) {
        double[] left = weights.clone();
        double spent = 0;
        Set<String> families = new HashSet<>();
        for (Step step : steps) {
            boolean harms = held || barred.containsKey(step.method());
            spent += Arrays.stream(left).sum() * (step.cost() + (harms ? decisions.value(DecisionId.HARM) : 0));
            double share = families.add(step.family()) ? 1 : decisions.value(DecisionId.SAME_AGAIN);
            double[] takes = chances.get(step.method());
            for (int i = 0; i < left.length; i++) {
                left[i] *= 1 - share * takes[i];
            }
        }
        return spent + Arrays.stream(left).sum() * decisions.value(DecisionId.HANDING_OVER);
    }
}
