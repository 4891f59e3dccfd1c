package rungwise.ladder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.question.Question;
import rungwise.science.Belief;
import rungwise.science.Stubbornness;

/**
 * The hidden states of a spot: each part of each suspect fresh and hardened, and last all that is hardly believed as one. A weight is the
 * belief in a state, and a chance of a method is stated for each of them.
 */
final class States {
    private final Situation situation;
    private final KnowledgeBase base;
    private final ChanceTable table;
    private final SurfaceKind surface;
    private final List<State> states = new ArrayList<>();
    private final double[] prior;
    private final Stubbornness spots;

    /** One of these for each part of what a suspect is made of, the fresh ones before the hardened. */
    private record State(int suspect, boolean hardened) {
    }

    States(Situation situation, KnowledgeBase base, ChanceTable table) {
        this.situation = situation;
        this.base = base;
        this.table = table;
        this.surface = situation.surface().kind();
        this.spots = new Stubbornness(base.assumptions().value(AssumptionId.STUBBORN_SPOTS));
        List<Double> weights = new ArrayList<>();
        for (int i = 0; i < situation.suspects().size(); i++) {
            Suspect suspect = situation.suspects().get(i);
            add(i, false, suspect.weight() * suspect.age().fresh(), weights);
            add(i, true, suspect.weight() * suspect.age().hardened(), weights);
        }
        weights.add(situation.others().stream().mapToDouble(Situation.Other::weight).sum());
        prior = weights.stream().mapToDouble(w -> w).toArray();
        normalise(prior);
    }

    private void add(int suspect, boolean hardened, double weight, List<Double> weights) {
        double[] shares = situation.suspects().get(suspect).contaminant().shares(hardened);
        for (double share : shares) {
            states.add(new State(suspect, hardened));
            weights.add(weight * share);
        }
    }

    double[] prior() {
        return prior.clone();
    }

    /** What is known of a method for each suspect. */
    List<Likely> likely(Method method) {
        return situation.suspects().stream().map(s -> table.of(s.contaminant(), method, surface)).toList();
    }

    private static double moved(double part, double was, double now) {
        double odds = part / (1 - part) * now / (1 - now) * (1 - was) / was;
        return part >= 1 ? 1 : odds / (1 + odds);
    }

    /** Whether so much was tried on it here that its chances are the shop's own: a first try in a log turns no ladder over. */
    boolean isLearned(List<Choice> choices) {
        return table != ChanceTable.PRIOR && choices.stream().mapToLong(c -> count(c.method()).tries()).sum()
                >= base.decisions().value(DecisionId.COUNTED_FROM);
    }

    /** The prior, spots as stubborn as they come. */
    Still still() {
        return Still.of(spots, prior);
    }

    double pace(Method method) {
        return table.pace(method);
    }

    ChanceTable.Count count(Method method) {
        return table.count(situation.likeliest().contaminant(), method, surface);
    }

    /** Its chance in each state. */
    double[] chances(Method method, List<Likely> likely) {
        double[] chances = new double[prior.length];
        int at = 0;
        for (int i = 0; i < likely.size(); i++) {
            Contaminant contaminant = situation.suspects().get(i).contaminant();
            Chances whole = contaminant.chances(method);
            for (boolean hardened : List.of(false, true)) {
                double now = hardened ? likely.get(i).ifHardened() : likely.get(i).ifFresh();
                double was = whole.of(hardened).probability();
                double[] parts = contaminant.chances(method, hardened);
                // what a log moved moves the odds of every part alike
                for (double part : parts) {
                    chances[at++] = parts.length == 1 ? now : now == was ? part : moved(part, was, now);
                }
            }
        }
        double weight = 0;
        double sum = 0;
        for (Situation.Other other : situation.others()) {
            Likely one = table.of(other.contaminant(), method, surface);
            weight += other.weight();
            sum += other.weight() * other.age().mean(one.ifFresh(), one.ifHardened());
        }
        chances[at] = weight == 0 ? 0 : sum / weight;
        return chances;
    }

    /** Belief after every try that counts, in one place for what it is and for how hard it is. No log moves it, as it can lift a bar. */
    double[] afterTries() {
        double[] weights = prior();
        for (Question.Tried tried : Telling.tried(situation.question()).toList()) {
            Method method = base.methods().get(tried.method().get());
            double[] chances = chances(method, situation.suspects().stream()
                    .map(s -> Likely.prior(s.contaminant().chances(method))).toList());
            for (int i = 0; i < weights.length; i++) {
                weights[i] *= Telling.likelihood(tried, chances[i], base.decisions());
            }
            normalise(weights);
        }
        return weights;
    }

    /**
     * Belief after every try that counts, and how stubborn the spot is by them.
     *
     * @param weights from {@link #afterTries}
     */
    Still still(double[] weights) {
        double[] degrees = Still.of(spots, weights).joint();
        for (Question.Tried tried : Telling.tried(situation.question()).toList()) {
            Method method = base.methods().get(tried.method().get());
            double[] spread = Still.spread(chances(method, likely(method)), spots);
            for (int i = 0; i < degrees.length; i++) {
                degrees[i] *= Telling.likelihood(tried, spread[i], base.decisions());
            }
        }
        return Still.of(spots, weights, degrees);
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
        situation.suspects().forEach(s -> belief.put(s.id(), 0.0));
        for (int i = 0; i < states.size(); i++) {
            belief.merge(situation.suspects().get(states.get(i).suspect()).id(), weights[i], Double::sum);
        }
        return belief;
    }

    /** Belief that what lies there has hardened, over the suspects. */
    double hardened(double[] weights) {
        double hardened = 0;
        double all = 0;
        for (int i = 0; i < states.size(); i++) {
            hardened += states.get(i).hardened() ? weights[i] : 0;
            all += weights[i];
        }
        return all == 0 ? 0 : hardened / all;
    }

    /** Recorded tries behind a chance, each weighed by the belief in the state it is for. */
    double triesBehind(List<Likely> likely, double[] weights) {
        double tries = 0;
        for (int i = 0; i < states.size(); i++) {
            Likely one = likely.get(states.get(i).suspect());
            tries += weights[i] * (states.get(i).hardened() ? one.triesHardened() : one.triesFresh());
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
