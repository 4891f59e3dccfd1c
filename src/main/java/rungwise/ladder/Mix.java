package rungwise.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rungwise.knowledge.Decisions;
import rungwise.knowledge.Family;
import rungwise.knowledge.Figures;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.question.Question;
import rungwise.science.LeastCostMix;

/**
 * One ladder for a deposit that may be one of several. A hazard counts from a belief of 0.02, a bar from 0.10; the
 * chance of a method is its chance over all that the deposit may be, and the seven steps go by that chance. A key is
 * the largest that the method has for any of them, so the order stays cautious; it goes by what is permitted and not by
 * what is worth trying, so that no log moves it.
 */
final class Mix {
    static final double HAZARD_FROM = 0.02;
    static final double BAR_FROM = 0.10;
    private static final int ASKED_AT_MOST = 12;
    private static final int ASKED_AT_LEAST = 3;
    private static final double BRIEFLY_ASKED_FROM = 0.05;
    private static final int OPTIONAL_AT_MOST = 12;
    private static final double SLOW_OVER_MINUTES = 30;
    private static final int PUSHES_TO_GRADE = 5;

    private final KnowledgeBase base;
    private final Sequence sequence;
    private final Question question;
    private final Prospects prospects;
    private final Believed believed;
    private final Map<String, Double> belief;
    private final boolean brief;
    private final List<String> asked;
    private final Set<String> barred = new TreeSet<>();
    private final Set<String> barredEver = new TreeSet<>();
    private final Map<String, String[]> passed = new LinkedHashMap<>();
    private final Map<String, String> again = new LinkedHashMap<>();
    private final List<Able> slow = new ArrayList<>();
    private List<Able> rungs = List.of();
    private double cost;

    /**
     * A candidate as the mixture sees it.
     *
     * @param worst what it is for the contaminant on which it is harshest
     * @param from  that contaminant
     */
    record Able(Choice worst, String from, Key key, double mean, boolean asks, double cost) {
        Method method() {
            return worst.method();
        }

        boolean takesFilm() {
            return worst.takesFilm();
        }

        double dwell() {
            return method().dwell().usual();
        }
    }

    /**
     * The mixture.
     *
     * @param brief ask in full only about what is likely, and about every hazard; enough to weigh a check by
     */
    Mix(Advisor advisor, Question question, Prospects prospects, Believed believed, boolean brief) {
        this.base = advisor.knowledge();
        this.sequence = advisor.sequence();
        this.question = question;
        this.prospects = prospects;
        this.believed = believed;
        this.belief = believed.now();
        this.brief = brief;
        this.asked = asked(belief);
        choose();
    }

    private List<String> asked(Map<String, Double> by) {
        List<String> likeliest = by.entrySet().stream().sorted(Map.Entry.<String, Double>comparingByValue()
                .reversed().thenComparing(Map.Entry.comparingByKey())).map(Map.Entry::getKey).toList();
        List<String> ids = new ArrayList<>();
        for (String id : likeliest) {
            boolean counts = by.get(id) >= (brief && !isHazard(id) ? BRIEFLY_ASKED_FROM : HAZARD_FROM);
            if (ids.size() < (brief ? 1 : ASKED_AT_LEAST) || counts && ids.size() < ASKED_AT_MOST) {
                ids.add(id);
            }
        }
        return ids;
    }

    private boolean isHazard(String contaminant) {
        return base.contaminants().get(contaminant).holds().isPresent()
                || base.contaminants().get(contaminant).emergency().isPresent();
    }

    List<String> asked() {
        return asked;
    }

    Answer answerFor(String contaminant) {
        return prospects.of(contaminant).answer();
    }

    /** The suspects for which a method is a candidate, the likeliest first. */
    List<String> askedOf(String method) {
        return asked.stream().filter(id -> prospects.of(id).order().containsKey(method)).toList();
    }

    double weight(String contaminant) {
        return belief.get(contaminant);
    }

    List<Able> rungs() {
        return rungs;
    }

    /** Gentle but slow, and not chosen. */
    List<Able> slow() {
        return slow;
    }

    Set<String> barred() {
        return barred;
    }

    /** Step and figures by method. */
    Map<String, String[]> passed() {
        return passed;
    }

    /** Gentler ones that come after a harsher one failed, with the figures that let them. */
    Map<String, String> again() {
        return again;
    }

    /** Rungs of any suspect that changed nothing. */
    Set<String> failed() {
        Set<String> failed = new TreeSet<>();
        asked.forEach(id -> failed.addAll(prospects.of(id).told().ladder().failed()));
        return failed;
    }

    /** Expected worker minutes of the ladder, referral included. */
    double cost() {
        return cost;
    }

    boolean isHeld() {
        return hazards().anyMatch(id -> answerFor(id).hold().isPresent());
    }

    /** What counts as a hazard: all that is believed enough, and in any case the likeliest. */
    java.util.stream.Stream<String> hazards() {
        return asked.stream().filter(id -> weight(id) >= HAZARD_FROM || id.equals(asked.get(0)));
    }

    double mean(String method) {
        return mean(method, belief);
    }

    private double mean(String method, Map<String, Double> by) {
        double mean = 0;
        for (Map.Entry<String, Double> one : by.entrySet()) {
            mean += one.getValue() * prospects.chance(one.getKey(), method);
        }
        return mean;
    }

    private void choose() {
        asked.forEach(id -> {
            Prospects.Prospect prospect = prospects.of(id);
            if (weight(id) >= BAR_FROM || asked.indexOf(id) == 0) {
                barred.addAll(prospect.barred());
                barredEver.addAll(prospect.told().barredEver());
            }
        });
        if (isHeld()) {
            cost = base.decisions().value("handing-over");
            return;
        }
        List<Able> able = candidates();
        able.removeIf(a -> passes(a, a.mean() < Worth.POINTLESS_BELOW, "pointless", "chance "
                + Figures.text(Figures.thousandths(a.mean())) + " over all it may be, under " + Figures.text(Worth.POINTLESS_BELOW)));
        able.removeIf(a -> passes(a, a.mean() < Worth.REAL_FROM && (a.takesFilm() || a.asks()), "earned",
                (a.takesFilm() ? "takes film" : "needs agreement") + " for a chance of "
                        + Figures.text(Figures.thousandths(a.mean())) + " over all it may be"));
        Set<String> forced = new HashSet<>();
        able.stream().filter(a -> a.mean() >= Worth.REAL_FROM && !a.takesFilm()
                        && (a.dwell() <= SLOW_OVER_MINUTES || a.dwell() <= question.canWaitMinutes()))
                .forEach(a -> {
                    forced.add(a.method().id());
                    able.stream().filter(f -> isFiner(f, a)).forEach(f -> forced.add(f.method().id()));
                });
        List<Able> optional = able.stream().filter(a -> !forced.contains(a.method().id()))
                .sorted(Comparator.comparingDouble(a -> -a.mean() / Math.max(0.1, a.cost()))).toList();
        for (Able out : optional.subList(Math.min(OPTIONAL_AT_MOST, optional.size()), optional.size())) {
            able.remove(out);
            passes(out, true, "cost", "twelve others promise more for their minutes");
        }
        cheapest(able, forced);
    }

    private boolean passes(Able able, boolean out, String step, String why) {
        if (out) {
            passed.put(able.method().id(), new String[]{step, why});
        }
        return out;
    }

    private void cheapest(List<Able> able, Set<String> forced) {
        List<String> rest = belief.keySet().stream().filter(id -> !asked.contains(id)).toList();
        double[] weights = new double[asked.size() + 1];
        for (int i = 0; i < asked.size(); i++) {
            weights[i] = weight(asked.get(i));
        }
        double others = rest.stream().mapToDouble(belief::get).sum();
        weights[asked.size()] = others;
        List<LeastCostMix.Try> tries = able.stream().map(a -> {
            List<Double> chances = new ArrayList<>();
            asked.forEach(id -> chances.add(prospects.chance(id, a.method().id())));
            double sum = rest.stream().mapToDouble(id -> belief.get(id) * prospects.chance(id, a.method().id())).sum();
            chances.add(others <= 0 ? 0 : sum / others);
            return new LeastCostMix.Try(a.cost(), chances, a.method().family());
        }).toList();
        long always = 0;
        long[] needs = new long[able.size()];
        for (int i = 0; i < able.size(); i++) {
            always |= forced.contains(able.get(i).method().id()) ? 1L << i : 0;
            for (int j = 0; j < able.size(); j++) {
                needs[i] |= isFiner(able.get(j), able.get(i)) ? 1L << j : 0;
            }
        }
        LeastCostMix.Chosen chosen = LeastCostMix.of(tries, always, needs, weights, base.decisions().value("handing-over"));
        cost = chosen.cost();
        List<Able> kept = new ArrayList<>();
        for (int i = 0; i < able.size(); i++) {
            if ((chosen.mask() & 1L << i) != 0) {
                kept.add(able.get(i));
            } else {
                if (able.get(i).dwell() > SLOW_OVER_MINUTES) {
                    slow.add(able.get(i));
                }
                passes(able.get(i), true, able.get(i).dwell() > SLOW_OVER_MINUTES ? "slow" : "cost",
                        "chance " + Figures.text(Figures.thousandths(able.get(i).mean())) + " over all it may be is not worth "
                                + Figures.text(Figures.thousandths(able.get(i).cost())) + " min");
            }
        }
        rungs = List.copyOf(kept);
    }

    private boolean isFiner(Able one, Able other) {
        Family family = base.families().get(one.method().family());
        return family.graded() && one.method().family().equals(other.method().family())
                && one.method().severity().filmMicrons() < other.method().severity().filmMicrons();
    }

    /** What some suspect would have on its ladder, in the order of the mixture. */
    private List<Able> candidates() {
        List<Able> order = order();
        List<Able> able = new ArrayList<>(order.stream().filter(a -> !barred.contains(a.method().id())
                && asked.stream().anyMatch(id -> prospects.of(id).rungs().containsKey(a.method().id()))).toList());
        for (Failure failure : failures()) {
            climb(able, order.stream().map(a -> a.method().id()).toList(), failure);
        }
        boolean softened = able.stream().anyMatch(a -> !a.method().softens().isEmpty() && !a.method().needsSoftener());
        able.removeIf(a -> a.method().needsSoftener() && !softened);
        return able;
    }

    /**
     * A rung that changed nothing.
     *
     * @param before   what was believed when it was tried
     * @param suspects those then asked for that have it as a candidate
     */
    private record Failure(String method, Map<String, Double> before, List<String> suspects) {
    }

    /** Tries on a prepared panel that changed nothing, of what was worth trying by what was then believed. */
    private List<Failure> failures() {
        List<Failure> failures = new ArrayList<>();
        for (int i = 0; i < question.tried().size(); i++) {
            Question.Tried tried = question.tried().get(i);
            if (!tried.counts() || !tried.outcome().equals("no-change") || tried.method().isEmpty()) {
                continue;
            }
            String id = tried.method().get();
            Map<String, Double> before = believed.beforeTry().get(i);
            List<String> suspects = asked(before).stream().filter(s -> prospects.of(s).order().containsKey(id)).toList();
            double mean = before.entrySet().stream().mapToDouble(b -> b.getValue() * prospects.untried(b.getKey(), id)).sum();
            if (mean >= Worth.POINTLESS_BELOW
                    && suspects.stream().anyMatch(s -> prospects.of(s).told().ladder().failed().contains(id))) {
                failures.add(new Failure(id, before, suspects));
            }
        }
        return failures;
    }

    /**
     * Law 5 where it is not known what it is: after a rung changed nothing, no gentler one comes back, unless it was never
     * tried and its chance rose, as the failure makes it likelier to be something else. A dissolver that is owed before
     * what only shears stays, as for a known contaminant.
     */
    private void climb(List<Able> able, List<String> order, Failure failure) {
        String failed = failure.method();
        int at = order.indexOf(failed);
        able.removeIf(a -> {
            String id = a.method().id();
            if (order.indexOf(id) >= at || Ladder.isOwed(a.method(), base.methods().get(failed), question, sequence)) {
                return false;
            }
            double was = Figures.thousandths(mean(id, failure.before()));
            double is = Figures.thousandths(a.mean());
            boolean stays = is > was && !question.hasTried(id);
            if (stays) {
                again.put(id, "chance " + Figures.text(was) + " before " + failed + " changed nothing, " + Figures.text(is) + " since");
            }
            return passes(a, !stays, "climbed past", "gentler than " + failed + ", which changed nothing; chance "
                    + Figures.text(was) + " before it, " + Figures.text(is) + " since");
        });
    }

    /** A method as the mixture sees it, by its own largest key. */
    Able able(String method) {
        return able(method, askedOf(method));
    }

    private Able able(String method, List<String> suspects) {
        String from = suspects.stream().max(Comparator.comparing((String id) -> prospects.of(id).order().get(method)
                .carried()).thenComparing(Comparator.reverseOrder())).orElseThrow();
        Choice worst = prospects.of(from).order().get(method);
        Decisions weights = base.decisions();
        boolean asks = suspects.stream().anyMatch(id -> prospects.of(id).order().get(method).asks());
        return new Able(worst, from, worst.carried(), mean(method), asks,
                weights.value("minute-of-work") * worst.workMinutes() + weights.value("minute-of-waiting") * worst.dwellMinutes()
                        + weights.value("micron-of-film") * worst.severity().filmMicrons()
                        + worst.method().marringPercent() / 100 * weights.value("visible-mark"));
    }

    /**
     * All that is permitted, by the largest key, which one that must come after others takes over from them; and what
     * failed, wherever it would stand.
     */
    private List<Able> order() {
        Map<String, Able> able = new TreeMap<>();
        asked.forEach(id -> prospects.of(id).order().keySet().stream().filter(m -> !barredEver.contains(m))
                .forEach(m -> able.computeIfAbsent(m, this::able)));
        Set<String> permitted = Set.copyOf(able.keySet());
        failures().forEach(f -> able.computeIfAbsent(f.method(), m -> able(m, f.suspects())));
        Map<String, Key> keys = new HashMap<>();
        Map<String, Integer> depth = new HashMap<>();
        able.forEach((id, a) -> keys.put(id, a.key()));
        boolean moved = true;
        for (int round = 0; moved && round < able.size(); round++) {
            moved = false;
            for (String then : able.keySet()) {
                for (String first : sequence.earlierThan(then).keySet()) {
                    Able before = able.get(first);
                    if (before == null || !permitted.contains(first) || before.worst().severity().chemical() > PUSHES_TO_GRADE || before.asks()
                            || before.takesFilm()) {
                        continue;
                    }
                    int compared = keys.get(first).compareTo(keys.get(then));
                    int deep = depth.getOrDefault(first, 0) + 1;
                    if (compared > 0 || compared == 0 && deep > depth.getOrDefault(then, 0)) {
                        keys.put(then, keys.get(first));
                        depth.put(then, deep);
                        moved = true;
                    }
                }
            }
        }
        return able.values().stream().map(a -> new Able(a.worst(), a.from(), keys.get(a.method().id()), a.mean(), a.asks(),
                a.cost())).sorted(Comparator.comparing(Able::key).thenComparing(a -> depth.getOrDefault(a.method().id(), 0))
                .thenComparing(a -> a.method().id())).toList();
    }
}
