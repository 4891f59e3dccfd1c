package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
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
 * Weighs signs by Bayes' rule: how likely a deposit is beforehand, times the share of those who look at it that say just this. Words of a
 * kind share one distribution; any other sign has a share of its own, and what it implies is counted beside it, once. A check that may
 * be proposed shows one of its signs or none of them.
 */
final class Weighing {
    private static final String TRIED = "tried";
    /** The group of signs that say on which side of the vehicle it lies. */
    static final String SIDE = "side";

    private final KnowledgeBase base;
    private final Beforehand beforehand;
    private final Map<String, Kind> kinds = new TreeMap<>();
    private final Map<String, List<Observation>> made = new TreeMap<>();
    private final Map<String, List<Observation>> seenBy = new TreeMap<>();

    Weighing(KnowledgeBase base) {
        this.base = base;
        this.beforehand = new Beforehand(base);
        base.observations().values().forEach(o -> seenBy.computeIfAbsent(o.seenBy(), c -> new ArrayList<>()).add(o));
        Map<String, List<Observation>> words = new TreeMap<>();
        base.observations().values().stream().filter(Observation::word).forEach(o -> words.computeIfAbsent(o.group(), g -> new ArrayList<>()).add(o));
        words.forEach((group, all) -> kinds.put(group, new Kind(base.signs().groups().get(group), all, base)));
        base.observations().values().stream().filter(o -> isMade(o, base) && o.speaks()).forEach(o ->
                made.computeIfAbsent(o.seenBy(), c -> new ArrayList<>()).add(o));
    }

    /** Whether it is one of the outcomes of a check that has one outcome and no words. */
    static boolean isMade(Observation sign, KnowledgeBase base) {
        return !sign.word() && base.signs().checks().get(sign.seenBy()).offered()
                && base.observations().values().stream().noneMatch(o -> o.word() && o.seenBy().equals(sign.seenBy()));
    }

    /** Probability by contaminant by the signs alone: the tries are weighed by the ladder, which knows how hard it is. */
    Suspects suspects(Noted noted) {
        return new Suspects(belief(noted));
    }

    /** Probability by contaminant by the signs alone, in id order. */
    Map<String, Double> belief(Noted noted) {
        List<ToDoubleFunction<String>> shares = shares(noted);
        boolean placed = noted.seen().stream().anyMatch(o -> o.id().startsWith(Spot.PLACE));
        Map<String, Double> weights = beforehand.weights(noted.question(), placed);
        List<String> ids = List.copyOf(weights.keySet());
        double[] probabilities = Evidence.probabilities(ids.stream().mapToDouble(id -> Math.log(weights.get(id))
                + shares.stream().mapToDouble(s -> Math.log(s.applyAsDouble(id))).sum()).toArray());
        Map<String, Double> belief = new TreeMap<>();
        for (int i = 0; i < probabilities.length; i++) {
            belief.put(ids.get(i), probabilities[i]);
        }
        return belief;
    }

    /** Of each look that was told, the share of those who would have told the same, by deposit. */
    private List<ToDoubleFunction<String>> shares(Noted noted) {
        List<ToDoubleFunction<String>> shares = new ArrayList<>();
        kinds.forEach((group, kind) -> {
            List<Observation> said = counted(noted, group);
            List<Observation> not = noted.notSeen().stream().filter(kind.words()::contains).toList();
            if (!said.isEmpty()) {
                shares.add(id -> kind.share(said, id));
            } else if (!not.isEmpty()) {
                shares.add(id -> none(not, id));
            }
        });
        noted.seen().stream().filter(o -> !o.word() && o.speaks()).forEach(o -> shares.add(id -> share(o, id)));
        noted.notSeen().stream().filter(o -> !o.word() && o.speaks() && !isMade(o, base)).forEach(o -> shares.add(id -> 1 - share(o, id)));
        missed(noted).values().forEach(signs -> shares.add(id -> none(signs, id)));
        return shares;
    }

    /** The words of a kind that count: the side of the vehicle only where no place and no surface tells it. */
    private List<Observation> counted(Noted noted, String group) {
        List<Observation> words = noted.seen().stream().filter(o -> o.word() && o.group().equals(group)).toList();
        return !group.equals(SIDE) ? words : words.stream().filter(o -> beforehand.side(noted.question()).filter(o.id()::equals).isEmpty()
                && noted.seen().stream().noneMatch(p -> p.word() && p.implies().contains(o.id()))).toList();
    }

    private EvidenceStrength strength(Observation observation) {
        return base.signs().strengths().get(observation.strength());
    }

    /** Share of those who look at this deposit that say this. */
    double share(Observation sign, String deposit) {
        if (sign.word()) {
            return kinds.get(sign.group()).share(sign, deposit);
        }
        return made.containsKey(sign.seenBy()) && made.get(sign.seenBy()).contains(sign) ? shown(sign, deposit) : rate(sign, deposit);
    }

    private double rate(Observation sign, String deposit) {
        EvidenceStrength strength = strength(sign);
        return sign.shareOn(deposit).orElse(sign.pointsTo().contains(deposit) ? strength.right()
                : sign.against().contains(deposit) ? strength.against() : strength.wrong());
    }

    /** How often a check with one outcome shows this one: its rate, less where the rates of all would be more than one. */
    private double shown(Observation outcome, String deposit) {
        double all = made.get(outcome.seenBy()).stream().mapToDouble(o -> rate(o, deposit)).sum();
        return rate(outcome, deposit) * Math.min(1, (1 - otherwise()) / all);
    }

    /** Signs that a check with one outcome did not show, by check; where it showed one, the others say nothing more. */
    private Map<String, List<Observation>> missed(Noted noted) {
        Map<String, List<Observation>> none = new TreeMap<>();
        noted.notSeen().stream().filter(o -> isMade(o, base) && o.speaks()
                        && noted.seen().stream().noneMatch(s -> s.speaks() && s.seenBy().equals(o.seenBy())))
                .forEach(o -> none.computeIfAbsent(o.seenBy(), c -> new ArrayList<>()).add(o));
        return none;
    }

    /** Share of those who look that say none of these, of which only one may hold. */
    private double none(Collection<Observation> signs, String deposit) {
        return Math.max(otherwise(), 1 - signs.stream().mapToDouble(o -> share(o, deposit)).sum());
    }

    /** How often at least a check comes out otherwise than by one of the signs that are known. */
    private double otherwise() {
        return base.decisions().value(DecisionId.SEEN_OTHERWISE);
    }

    /** Every sign that a check may show, whether it says anything of the deposit or not. */
    List<Observation> seenBy(String check) {
        return seenBy.getOrDefault(check, List.of());
    }

    /** What a check may show: its words, or else its other signs. */
    List<Observation> outcomes(String check) {
        List<Observation> all = seenBy(check).stream().filter(Observation::speaks).toList();
        List<Observation> words = all.stream().filter(Observation::word).toList();
        return words.isEmpty() ? all : words;
    }

    /**
     * How often a check shows each of its outcomes on a deposit, and last how often none of them: one check has one outcome, so these add up
     * to one.
     */
    double[] rates(List<Observation> ofOneCheck, String deposit) {
        double[] rates = new double[ofOneCheck.size() + 1];
        rates[ofOneCheck.size()] = 1;
        for (int i = 0; i < ofOneCheck.size(); i++) {
            rates[i] = share(ofOneCheck.get(i), deposit);
            rates[ofOneCheck.size()] -= rates[i];
        }
        rates[ofOneCheck.size()] = Math.max(0, rates[ofOneCheck.size()]);
        return rates;
    }

    /** How many times likelier it is on this deposit than on whatever is met. */
    private double ratio(ToDoubleFunction<String> share, String deposit) {
        double all = 0;
        double sum = 0;
        for (String id : base.contaminants().keySet()) {
            double weight = base.signs().frequencyOf(id).weight();
            all += weight;
            sum += weight * share.applyAsDouble(id);
        }
        return share.applyAsDouble(deposit) * all / sum;
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
        noted.seen().stream().filter(Observation::speaks).forEach(o -> signs.add(sign(o, true, ratio(id -> share(o, id), contaminant))));
        noted.notSeen().stream().filter(Observation::speaks).forEach(o -> signs.add(sign(o, false, ratio(id -> none(List.of(o), id), contaminant))));
        Telling.tried(question).forEach(tried -> {
            Method method = base.methods().get(tried.method().orElseThrow());
            signs.add(new Sign("tried:" + method.id(), method.name() + ": " + tried.outcome().replace('-', ' '), true, TRIED, "computed",
                    rounded(ratio(tried, contaminant, question)), false, method.basis(), method.sources()));
        });
        // half of all deposits lie on the same side: that says something to the reader only where it does not go together
        return signs.stream().filter(s -> !s.group().equals(SIDE) || s.ratio() < 1)
                .filter(s -> Math.abs(Math.log(s.ratio())) > Math.log(base.decisions().value(DecisionId.SIGN_SPEAKS))).sorted(Comparator
                .comparingDouble((Sign s) -> -Math.abs(Math.log(s.ratio()))).thenComparing(Sign::sign)).toList();
    }

    private Sign sign(Observation o, boolean seen, double ratio) {
        return new Sign(o.id(), seen ? o.says() : Texts.said("diagnosis.not-there", "sign", o.says()), seen, o.group(), o.strength(),
                rounded(ratio), seen && o.strength().equals("decisive"), o.basis(), o.sources());
    }

    /** Two figures after the point, and never so few that it would be nothing. */
    private static double rounded(double ratio) {
        return Math.max(0.01, Math.round(ratio * 100) / 100.0);
    }
}
