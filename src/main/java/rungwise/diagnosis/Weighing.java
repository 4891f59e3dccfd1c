package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rungwise.diagnosis.Identification.Sign;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.EvidenceStrength;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.method.Method;
import rungwise.ladder.Suspects;
import rungwise.ladder.Telling;
import rungwise.question.Question;
import rungwise.science.Evidence;
import rungwise.text.Texts;

/**
 * Weighs signs by Bayes' rule: how often a contaminant is met, times what each group of signs says. A sign seen counts
 * with its ratio, one looked for in vain with what its absence tells, an attempt with the chance of its outcome. A check
 * that may be proposed has one outcome or none of those known, so its signs that were not seen count as one.
 */
final class Weighing {
    private static final String TRIED = "tried";
    /** The group of signs that say on which side of the vehicle it lies. */
    static final String SIDE = "side";

    private final KnowledgeBase base;
    private final Map<String, Double> logPriors = new TreeMap<>();
    private final Map<String, Set<String>> pointedTo = new TreeMap<>();
    private final Map<String, List<Observation>> made = new TreeMap<>();

    Weighing(KnowledgeBase base) {
        this.base = base;
        base.contaminants().keySet().forEach(id -> logPriors.put(id, Math.log(base.signs().frequencyOf(id).weight())));
        base.observations().values().stream().filter(o -> o.otherwise().isPresent()).forEach(o ->
                pointedTo.computeIfAbsent(o.group(), g -> new TreeSet<>()).addAll(o.pointsTo()));
        base.observations().values().stream().filter(o -> isMade(o) && o.speaks()).forEach(o ->
                made.computeIfAbsent(o.seenBy(), c -> new ArrayList<>()).add(o));
    }

    /** Probability by contaminant by the signs alone: the tries are weighed by the ladder, which knows how hard it is. */
    Suspects suspects(Noted noted) {
        return new Suspects(belief(noted));
    }

    /** Probability by contaminant by the signs alone, in id order. */
    Map<String, Double> belief(Noted noted) {
        double[] logs = new double[logPriors.size()];
        int i = 0;
        for (String id : logPriors.keySet()) {
            Map<String, List<Double>> groups = new LinkedHashMap<>();
            noted.seen().forEach(o -> add(groups, o.group(), Math.log(ratio(o, id))));
            noted.notSeen().stream().filter(o -> !isMade(o)).forEach(o -> add(groups, o.group(), Math.log(ifNotSeen(o, id))));
            none(noted).forEach((check, signs) -> add(groups, signs.get(0).group(), Math.log(ifNone(signs, id))));
            double log = logPriors.get(id);
            for (Map.Entry<String, List<Double>> group : groups.entrySet()) {
                log += Evidence.ofAGroup(group.getValue().stream().mapToDouble(d -> d).toArray(),
                        base.signs().groups().get(group.getKey()).cap());
            }
            logs[i++] = log;
        }
        double[] probabilities = Evidence.probabilities(logs);
        Map<String, Double> belief = new TreeMap<>();
        int n = 0;
        for (String id : logPriors.keySet()) {
            belief.put(id, probabilities[n++]);
        }
        return belief;
    }

    private static void add(Map<String, List<Double>> groups, String group, double log) {
        if (log != 0) {
            groups.computeIfAbsent(group, g -> new ArrayList<>()).add(log);
        }
    }

    private EvidenceStrength strength(Observation observation) {
        return base.signs().strengths().get(observation.strength());
    }

    private double ifSeen(Observation observation, String contaminant) {
        double ratio = strength(observation).ratio();
        if (observation.pointsTo().contains(contaminant)) {
            return ratio;
        }
        if (observation.against().contains(contaminant)) {
            return 1 / ratio;
        }
        return observation.otherwise().filter(o -> !observation.fits().contains(contaminant)
                && pointedTo.get(observation.group()).contains(contaminant))
                .map(o -> 1 / base.signs().strengths().get(o).ratio()).orElse(1.0);
    }

    /** How often the sign is seen on this contaminant by somebody who looks. */
    double rate(Observation observation, String contaminant) {
        return anywhere(observation) * ifSeen(observation, contaminant);
    }

    private double ifNotSeen(Observation observation, String contaminant) {
        return (1 - rate(observation, contaminant)) / (1 - anywhere(observation));
    }

    /** Whether it is seen by a check that has one outcome. */
    private boolean isMade(Observation observation) {
        return base.signs().checks().get(observation.seenBy()).offered();
    }

    /** Signs that a check with one outcome did not show, by check; where it showed one, the others say nothing more. */
    private Map<String, List<Observation>> none(Noted noted) {
        Map<String, List<Observation>> none = new TreeMap<>();
        noted.notSeen().stream().filter(o -> isMade(o) && o.speaks()
                        && noted.seen().stream().noneMatch(s -> s.speaks() && s.seenBy().equals(o.seenBy())))
                .forEach(o -> none.computeIfAbsent(o.seenBy(), c -> new ArrayList<>()).add(o));
        return none;
    }

    /** What it says that none of these outcomes of one check was seen, against a contaminant that none of them speaks of. */
    private double ifNone(List<Observation> outcomes, String contaminant) {
        double here = outcomes.stream().mapToDouble(o -> shown(o, contaminant)).sum();
        double elsewhere = outcomes.stream().mapToDouble(this::anywhere).sum();
        return Math.max(otherwise(), 1 - here) / Math.max(otherwise(), 1 - elsewhere);
    }

    /** How often at least a check comes out otherwise than by one of the signs that are known. */
    private double otherwise() {
        return base.decisions().value(DecisionId.SEEN_OTHERWISE);
    }

    /**
     * How often a check shows each of its outcomes on a contaminant, and last how often none of them: one check has one
     * outcome, so these add up to one.
     */
    double[] outcomes(List<Observation> ofOneCheck, String contaminant) {
        double[] rates = new double[ofOneCheck.size() + 1];
        rates[ofOneCheck.size()] = 1;
        for (int i = 0; i < ofOneCheck.size(); i++) {
            rates[i] = shown(ofOneCheck.get(i), contaminant);
            rates[ofOneCheck.size()] -= rates[i];
        }
        return rates;
    }

    /** How often a check with one outcome shows this one: its rate, less where the rates of all would be more than one. */
    private double shown(Observation outcome, String contaminant) {
        double all = made.get(outcome.seenBy()).stream().mapToDouble(o -> rate(o, contaminant)).sum();
        return rate(outcome, contaminant) * Math.min(1, (1 - otherwise()) / all);
    }

    /** How many times likelier the sign is on this contaminant than where it says nothing. */
    private double ratio(Observation seen, String contaminant) {
        return isMade(seen) && seen.speaks() ? shown(seen, contaminant) / anywhere(seen) : ifSeen(seen, contaminant);
    }

    /** How often the sign is seen where it says nothing. */
    private double anywhere(Observation observation) {
        return strength(observation).seen() / strength(observation).ratio();
    }

    /** How many times likelier an outcome of a try is on this contaminant than on the average of all. */
    private double ratio(Question.Tried tried, String contaminant, Question question) {
        double average = base.contaminants().values().stream().mapToDouble(c -> Telling.likelihood(tried, c, question, base))
                .average().orElse(1);
        return Telling.likelihood(tried, base.contaminants().get(contaminant), question, base) / average;
    }

    /** Every sign that says something of this contaminant, the most telling first. */
    List<Sign> signs(Noted noted, Question question, String contaminant) {
        List<Sign> signs = new ArrayList<>();
        noted.seen().forEach(o -> signs.add(sign(o, true, ratio(o, contaminant))));
        noted.notSeen().forEach(o -> signs.add(sign(o, false, ifNotSeen(o, contaminant))));
        Telling.tried(question).forEach(tried -> {
            Method method = base.methods().get(tried.method().orElseThrow());
            signs.add(new Sign("tried:" + method.id(), method.name() + ": " + tried.outcome().replace('-', ' '), true, TRIED, "computed",
                    rounded(ratio(tried, contaminant, question)), false, method.basis(), method.sources()));
        });
        // half of all deposits lie on the same side: that says something to the reader only where it does not go together
        return signs.stream().filter(s -> !s.group().equals(SIDE) || s.ratio() < 1)
                .filter(s -> Math.abs(Math.log(s.ratio())) > Math.log(base.decisions().value(DecisionId.SIGN_SPEAKS))).sorted(java.util.Comparator
                .comparingDouble((Sign s) -> -Math.abs(Math.log(s.ratio()))).thenComparing(Sign::sign)).toList();
    }

    private Sign sign(Observation o, boolean seen, double ratio) {
        return new Sign(o.id(), seen ? o.says() : Texts.said("diagnosis.not-there", "sign", o.says()), seen, o.group(), o.strength(),
                rounded(ratio), seen && o.strength().equals("decisive"), o.basis(), o.sources());
    }

    private static double rounded(double ratio) {
        return Math.round(ratio * 100) / 100.0;
    }
}
