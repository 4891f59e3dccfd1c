package rungwise.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.method.Mechanism;
import rungwise.rules.said.Because;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Reason;
import rungwise.rules.said.Replaces;
import rungwise.science.LeastCostMix;
import rungwise.text.Figure;
import rungwise.text.Texts;

/**
 * Which of the permitted methods, in their fixed order, are worth trying. Every figure it compares with is a decision of
 * knowledge; every method that is left out says which.
 */
final class Worth {
    private final Decisions decisions;
    private final Sequence sequence;
    private final double canWaitMinutes;
    private final Optional<Still> spot;

    Worth(Decisions decisions, Sequence sequence, double canWaitMinutes) {
        this(decisions, sequence, canWaitMinutes, Optional.empty());
    }

    private Worth(Decisions decisions, Sequence sequence, double canWaitMinutes, Optional<Still> spot) {
        this.decisions = decisions;
        this.sequence = sequence;
        this.canWaitMinutes = canWaitMinutes;
        this.spot = spot;
    }

    /**
     * The same where chances were learned: they were learned of spots that differ, and only hold where spots are taken to differ.
     * What somebody recalled of a method already has in it that it comes after others, and goes with half for a second of its kind.
     */
    Worth of(Still there) {
        return new Worth(decisions, sequence, canWaitMinutes, Optional.of(there));
    }

    /**
     * What is offered.
     *
     * @param cost expected worker minutes of the rungs, referral included
     */
    record Offer(List<Choice> rungs, Map<String, PassedOver> passed, double cost) {
    }

    /** What does the work of a method that is left out. */
    private record Twin(Choice one, Choice other, Because rule) {
    }

    /**
     * Chooses.
     *
     * @param ordered in their fixed order
     * @param weights belief in each hidden state
     * @param kept    stay unless they are pointless
     */
    Offer choose(List<Choice> ordered, double[] weights, Set<String> kept) {
        Map<String, PassedOver> pointless = new LinkedHashMap<>();
        List<Choice> able = new ArrayList<>(ordered);
        able.removeIf(c -> isPointless(c, weights, pointless));
        Set<String> there = new HashSet<>();
        able.forEach(c -> there.add(c.id()));
        Offer offer = among(able, there, weights, kept, pointless);
        // what stands in for another has to be offered: where nothing is, the other is weighed after all
        return offer.rungs().isEmpty() && able.stream().anyMatch(c -> c.verdict().needless().stream().anyMatch(n -> there.contains(n.conclusion()
                .instead()))) ? among(able, Set.of(), weights, kept, pointless) : offer;
    }

    /**
     * The offer.
     *
     * @param there what may stand in for another
     */
    private Offer among(List<Choice> thought, Set<String> there, double[] weights, Set<String> kept, Map<String, PassedOver> left) {
        Map<String, PassedOver> without = new LinkedHashMap<>(left);
        List<Choice> able = new ArrayList<>(thought);
        able.removeIf(c -> !kept.contains(c.id()) && isNeedless(c, there, without));
        // a method is left out only for one that is offered: what turned out not to be offered replaces nothing
        Set<String> absent = new HashSet<>();
        while (true) {
            Map<String, PassedOver> passed = new LinkedHashMap<>(without);
            List<Twin> twins = twins(able, weights, absent, kept);
            twins.forEach(t -> pass(t.one(), DecisionId.SAME_AGAIN, List.of(t.rule(), because(DecisionId.SAME_AGAIN,
                    Figure.of("instead", t.other().method().name()), Figure.against("chance", rounded(t.one().mean(weights)), "",
                            rounded(t.other().mean(weights))))), passed));
            Set<String> replaced = new HashSet<>();
            twins.forEach(t -> replaced.add(t.one().id()));
            Offer offer = offer(able.stream().filter(c -> !replaced.contains(c.id())).toList(), weights, kept, passed);
            Set<String> offered = new HashSet<>();
            offer.rungs().forEach(r -> offered.add(r.id()));
            boolean holds = true;
            for (Twin twin : twins) {
                holds &= offered.contains(twin.other().id()) || !absent.add(twin.other().id());
            }
            if (holds) {
                return offer;
            }
        }
    }

    private Offer offer(List<Choice> able, double[] weights, Set<String> kept, Map<String, PassedOver> passed) {
        List<Choice> left = new ArrayList<>(able);
        left.removeIf(c -> !kept.contains(c.id()) && isUnearned(c, weights, passed));
        left.removeAll(harsherForLess(left, weights, kept, passed));
        Set<String> forced = new HashSet<>();
        for (Choice choice : left) {
            boolean real = isReal(choice, weights) && !choice.takesFilm() && (!isSlow(choice)
                    || choice.dwellMinutes() <= canWaitMinutes);
            if (real || kept.contains(choice.id())) {
                forced.add(choice.id());
                finer(choice, left).forEach(f -> forced.add(f.id()));
            }
        }
        dropMost(left, forced, weights, passed);
        LeastCostMix.Chosen chosen = cheapest(left, forced, weights);
        List<Choice> picked = new ArrayList<>();
        List<Choice> dear = new ArrayList<>();
        for (int i = 0; i < left.size(); i++) {
            ((chosen.mask() & 1L << i) != 0 ? picked : dear).add(left.get(i));
        }
        dear.forEach(out -> passForCost(out, left, picked, weights, passed));
        return new Offer(enough(picked, weights, kept, passed), passed, chosen.cost());
    }

    boolean isPointless(Choice choice, double[] weights, Map<String, PassedOver> passed) {
        double mean = choice.mean(weights);
        double limit = decisions.value(DecisionId.POINTLESS);
        if (mean >= limit) {
            return false;
        }
        pass(choice, DecisionId.POINTLESS, List.of(because(DecisionId.POINTLESS, Figure.against("chance", rounded(mean), "", limit))), passed);
        return true;
    }

    /** What the trade does not take here, for the sake of another only where that one can be taken. */
    private boolean isNeedless(Choice choice, Set<String> there, Map<String, PassedOver> passed) {
        List<Because> why = choice.verdict().needless().stream().filter(n -> n.conclusion().instead().isEmpty()
                || there.contains(n.conclusion().instead())).map(Concluded::because).toList();
        if (why.isEmpty()) {
            return false;
        }
        List<Because> all = new ArrayList<>(why);
        all.add(because(DecisionId.NEEDLESS, Figure.of("found", why.get(0).reason().says().replaceFirst("\\.$", ""))));
        pass(choice, DecisionId.NEEDLESS, all, passed);
        return true;
    }

    boolean isReal(Choice choice, double[] weights) {
        double real = decisions.value(DecisionId.REAL_CHANCE);
        return choice.mean(weights) >= real || takesAPart(choice, weights, real);
    }

    /** Whether it has a real chance on a part of the deposit that is worth a step of its own. */
    private boolean takesAPart(Choice choice, double[] weights, double real) {
        for (int i = 0; i < weights.length - 1; i++) {
            if (weights[i] >= decisions.value(DecisionId.PART_THAT_COUNTS) && choice.chances()[i] >= real) {
                return true;
            }
        }
        return false;
    }

    boolean isSlow(Choice choice) {
        return choice.dwellMinutes() > decisions.value(DecisionId.SLOW);
    }

    /** What each of these could do without, for the sake of another of them that comes first. */
    private List<Twin> twins(List<Choice> able, double[] weights, Set<String> absent, Set<String> kept) {
        List<Twin> twins = new ArrayList<>();
        Set<String> out = new HashSet<>();
        for (Choice one : able) {
            if (kept.contains(one.id())) {
                continue;
            }
            for (Choice other : able) {
                Optional<Because> rule = other == one || out.contains(other.id()) || absent.contains(other.id())
                        ? Optional.empty() : replaces(other, one, weights);
                if (rule.isPresent()) {
                    out.add(one.id());
                    twins.add(new Twin(one, other, rule.get()));
                    break;
                }
            }
        }
        return twins;
    }

    /** The rule by which the other does all that this one does, at no price; empty where it does not. */
    private Optional<Because> replaces(Choice other, Choice one, double[] weights) {
        if (sequence.isFiner(one.id(), other.id()) || other.own().compareTo(one.own()) >= 0 || !other.isAsLikelyAs(one)
                || other.asks() && !one.asks()) {
            return Optional.empty();
        }
        for (Concluded<Replaces> alike : sequence.replacing(other.id(), one.id())) {
            boolean does = alike.conclusion().like() == Replaces.Like.CHEMISTRY ? isAsQuick(other, one)
                    : leavesNothingTo(other, one, weights);
            if (does) {
                return Optional.of(alike.because());
            }
        }
        return Optional.empty();
    }

    private boolean isAsQuick(Choice other, Choice one) {
        return other.workMinutes() + other.dwellMinutes()
                <= one.workMinutes() + one.dwellMinutes() + decisions.value(DecisionId.AS_QUICK);
    }

    /** Half a chance is left to it; so it goes if it was the lesser chance from the start, or half is no real one. */
    private boolean leavesNothingTo(Choice other, Choice one, double[] weights) {
        double mean = one.mean(weights);
        boolean dissolves = one.method().mechanism().kin() == Mechanism.DISSOLVE;
        return (dissolves ? mean * decisions.value(DecisionId.SAME_AGAIN) : mean) < decisions.value(DecisionId.REAL_CHANCE)
                || other.isLikelierThan(one);
    }

    private boolean isUnearned(Choice choice, double[] weights, Map<String, PassedOver> passed) {
        if (isReal(choice, weights) || !(choice.takesFilm() || choice.asks())) {
            return false;
        }
        pass(choice, DecisionId.REAL_CHANCE, List.of(because(DecisionId.REAL_CHANCE, Figure.of("price",
                choice.takesFilm() ? "film" : Texts.said("ladder.an-agreement")),
                Figure.against("chance", rounded(choice.mean(weights)), "", decisions.value(DecisionId.REAL_CHANCE)))), passed);
        return true;
    }

    /** Unlikely ones after a likelier gentler one, unless they are the finer grade of a likely one. */
    private List<Choice> harsherForLess(List<Choice> left, double[] weights, Set<String> kept, Map<String, PassedOver> passed) {
        List<Choice> out = new ArrayList<>();
        Choice real = null;
        for (Choice one : left) {
            if (isReal(one, weights)) {
                real = real == null && !isSlow(one) ? one : real;
            } else if (real != null && !kept.contains(one.id()) && one.severity().worst() > real.severity().worst()
                    && left.stream().noneMatch(c -> sequence.isFiner(one.id(), c.id()) && isReal(c, weights))) {
                out.add(one);
                pass(one, DecisionId.HARSHER_FOR_LESS, List.of(because(DecisionId.HARSHER_FOR_LESS, Figure.of("after", real.method().name()),
                        Figure.against("chance", rounded(one.mean(weights)), "", decisions.value(DecisionId.REAL_CHANCE)))), passed);
            }
        }
        return out;
    }

    private List<Choice> finer(Choice choice, List<Choice> among) {
        return among.stream().filter(c -> sequence.isFiner(c.id(), choice.id())).toList();
    }

    /** Of those that are only worth it for their minutes, no more than can be weighed against one another. */
    private void dropMost(List<Choice> left, Set<String> forced, double[] weights, Map<String, PassedOver> passed) {
        int most = (int) decisions.value(DecisionId.MOST_WEIGHED);
        List<Choice> optional = left.stream().filter(c -> !forced.contains(c.id())).sorted(Comparator.comparingDouble(
                (Choice c) -> -c.mean(weights) / Math.max(0.1, c.cost())).thenComparing(Choice::id)).toList();
        for (Choice dropped : optional.subList(Math.min(most, optional.size()), optional.size())) {
            left.remove(dropped);
            pass(dropped, DecisionId.MOST_WEIGHED, List.of(because(DecisionId.MOST_WEIGHED, Figure.against("methods", optional.size(), "", most))),
                    passed);
        }
    }

    /** What must be in is in; of the rest, whatever lowers the expected cost. */
    private LeastCostMix.Chosen cheapest(List<Choice> left, Set<String> forced, double[] weights) {
        long always = 0;
        long[] needs = new long[left.size()];
        Map<String, Integer> at = new HashMap<>();
        for (int i = 0; i < left.size(); i++) {
            at.put(left.get(i).id(), i);
        }
        for (int i = 0; i < left.size(); i++) {
            if (forced.contains(left.get(i).id())) {
                always |= 1L << i;
            }
            for (Choice finer : finer(left.get(i), left)) {
                needs[i] |= 1L << at.get(finer.id());
            }
        }
        return LeastCostMix.of(left.stream().map(this::asTry).toList(), always, needs, belief(weights), decisions.value(DecisionId.HANDING_OVER));
    }

    private LeastCostMix.Try asTry(Choice choice) {
        return spot.map(s -> s.asTry(choice)).orElseGet(choice::asTry);
    }

    private double[] belief(double[] weights) {
        return spot.map(Still::joint).orElse(weights);
    }

    private double cost(List<Choice> tried, double[] weights) {
        long all = tried.isEmpty() ? 0 : -1L >>> 64 - tried.size();
        return LeastCostMix.of(tried.stream().map(this::asTry).toList(), all, new long[tried.size()], belief(weights),
                decisions.value(DecisionId.HANDING_OVER)).cost();
    }

    private void passForCost(Choice out, List<Choice> left, List<Choice> picked, double[] weights, Map<String, PassedOver> passed) {
        List<Choice> with = left.stream().filter(c -> c == out || picked.contains(c)).toList();
        Figure figure = Figure.against("expectedCost", Math.round(cost(with, weights) * 10) / 10.0, "min",
                Math.round(cost(picked, weights) * 10) / 10.0);
        Optional<Choice> missing = finer(out, left).stream().filter(f -> !picked.contains(f)).findFirst();
        if (isSlow(out)) {
            pass(out, DecisionId.SLOW, List.of(because(DecisionId.SLOW, Figure.against("dwell", out.dwellMinutes(), "min", decisions.value(DecisionId.SLOW)),
                    figure)), passed);
        } else if (missing.isPresent()) {
            pass(out, DecisionId.FINEST_FIRST, List.of(sequence.finerFirst(missing.get().id(), out.id()).orElseThrow(),
                    because(DecisionId.FINEST_FIRST, Figure.of("finer", missing.get().method().name()), figure)), passed);
        } else {
            pass(out, DecisionId.NOT_WORTH_ITS_MINUTES, List.of(because(DecisionId.NOT_WORTH_ITS_MINUTES, figure)), passed);
        }
    }

    /**
     * The rungs until next to nothing is left for the next one. A second try of one mechanism counts part of its chance, as
     * what one of them leaves the other mostly leaves too.
     */
    private List<Choice> enough(List<Choice> rungs, double[] weights, Set<String> keep, Map<String, PassedOver> passed) {
        Set<Mechanism> kinds = new HashSet<>();
        double[] left = weights.clone();
        Optional<Still> there = spot;
        List<Choice> kept = new ArrayList<>();
        for (Choice rung : rungs) {
            double still = there.map(Still::reached).orElse(DoubleStream.of(left).sum());
            if (still < decisions.value(DecisionId.ENOUGH) && !keep.contains(rung.id())) {
                pass(rung, DecisionId.ENOUGH, List.of(because(DecisionId.ENOUGH, Figure.against("chanceLeft", rounded(still), "",
                        decisions.value(DecisionId.ENOUGH)))), passed);
                continue;
            }
            double share = kinds.add(rung.method().mechanism().kin()) ? 1 : decisions.value(DecisionId.SAME_AGAIN);
            for (int i = 0; i < left.length; i++) {
                left[i] *= 1 - share * rung.chances()[i];
            }
            there = there.map(t -> t.after(rung));
            kept.add(rung);
        }
        return List.copyOf(kept);
    }

    private Because because(DecisionId decision, Figure... figures) {
        return Because.of(Reason.decision(decisions.of(decision)), List.of(figures));
    }

    private static double rounded(double value) {
        return Figures.thousandths(value);
    }

    private static void pass(Choice choice, DecisionId step, List<Because> because, Map<String, PassedOver> passed) {
        passed.put(choice.id(), new PassedOver(choice, step.id(), because));
    }
}
