package rungwise.ladder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.question.Question;
import rungwise.science.Belief;

/**
 * The hidden states of a spot: each suspect fresh and hardened, and last all that is hardly believed as one. A weight is the
 * belief in a state, and a chance of a method is stated for each of them.
 */
final class States {
    private final Situation situation;
    private final KnowledgeBase base;
    private final ChanceTable table;
    private final SurfaceKind surface;
    private final double[] prior;

    States(Situation situation, KnowledgeBase base, ChanceTable table) {
        this.situation = situation;
        this.base = base;
        this.table = table;
        this.surface = situation.surface().kind();
        this.prior = new double[2 * situation.suspects().size() + 1];
        for (int i = 0; i < situation.suspects().size(); i++) {
            Suspect suspect = situation.suspects().get(i);
            prior[2 * i] = suspect.weight() * suspect.age().fresh();
            prior[2 * i + 1] = suspect.weight() * suspect.age().hardened();
        }
        prior[prior.length - 1] = situation.others().values().stream().mapToDouble(w -> w).sum();
        normalise(prior);
    }

    double[] prior() {
        return prior.clone();
    }

    /** What is known of a method for each suspect. */
    List<Likely> likely(Method method) {
        return situation.suspects().stream().map(s -> table.of(s.contaminant(), method, surface)).toList();
    }

    /** Its chance in each state. */
    double[] chances(Method method, List<Likely> likely) {
        double[] chances = new double[prior.length];
        for (int i = 0; i < likely.size(); i++) {
            chances[2 * i] = likely.get(i).ifFresh();
            chances[2 * i + 1] = likely.get(i).ifHardened();
        }
        double weight = 0;
        double sum = 0;
        for (Map.Entry<String, Double> other : situation.others().entrySet()) {
            Contaminant contaminant = base.contaminants().get(other.getKey());
            Likely one = table.of(contaminant, method, surface);
            Belief age = Situation.age(situation.question(), contaminant, base.assumptions());
            weight += other.getValue();
            sum += other.getValue() * age.mean(one.ifFresh(), one.ifHardened());
        }
        chances[chances.length - 1] = weight == 0 ? 0 : sum / weight;
        return chances;
    }

    /** Belief after every try that counts, in one place for what it is and for how hard it is. No log moves it, as it can lift a bar. */
    double[] afterTries() {
        double[] weights = prior();
        for (Question.Tried tried : situation.question().tried()) {
            if (Telling.tells(tried)) {
                Method method = base.methods().get(tried.method().get());
                double[] chances = chances(method, situation.suspects().stream()
                        .map(s -> Likely.prior(s.contaminant().chances(method))).toList());
                for (int i = 0; i < weights.length; i++) {
                    weights[i] *= Telling.likelihood(tried, chances[i], base.decisions());
                }
                normalise(weights);
            }
        }
        return weights;
    }

    private static void normalise(double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
    }

    static double mean(double[] weights, double[] chances) {
        double mean = 0;
        for (int i = 0; i < weights.length; i++) {
            mean += weights[i] * chances[i];
        }
        return mean;
    }

    /** Belief in each suspect, whatever its state. */
    Map<String, Double> bySuspect(double[] weights) {
        Map<String, Double> belief = new LinkedHashMap<>();
        for (int i = 0; i < situation.suspects().size(); i++) {
            belief.put(situation.suspects().get(i).id(), weights[2 * i] + weights[2 * i + 1]);
        }
        return belief;
    }

    /** Belief that what lies there has hardened, over the suspects. */
    double hardened(double[] weights) {
        double hardened = 0;
        double all = 0;
        for (int i = 0; i < situation.suspects().size(); i++) {
            hardened += weights[2 * i + 1];
            all += weights[2 * i] + weights[2 * i + 1];
        }
        return all == 0 ? 0 : hardened / all;
    }

    /** Recorded tries behind a chance, each weighed by the belief in the state it is for. */
    double triesBehind(List<Likely> likely, double[] weights) {
        double tries = 0;
        for (int i = 0; i < likely.size(); i++) {
            tries += weights[2 * i] * likely.get(i).triesFresh() + weights[2 * i + 1] * likely.get(i).triesHardened();
        }
        return tries;
    }

    /** As the search for the cheapest ladder wants them. */
    static List<Double> boxed(double[] values) {
        List<Double> list = new ArrayList<>(values.length);
        for (double value : values) {
            list.add(value);
        }
        return list;
    }
}
