package rungwise.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwise.knowledge.Decisions;
import rungwise.knowledge.Family;
import rungwise.knowledge.Figures;
import rungwise.knowledge.Mechanism;
import rungwise.knowledge.ToolKind;
import rungwise.science.Belief;
import rungwise.science.ExpectedCost;
import rungwise.science.LeastCostSubset;

/** Which of the permitted methods, in their fixed order, are worth trying: the seven steps. */
final class Worth {
    static final double POINTLESS_BELOW = 0.10;
    static final double REAL_FROM = 0.30;
    /** Where less than this is left it is likelier something else than what it was taken for. */
    static final double ENOUGH_BELOW = 0.02;
    /** Two methods within a minute a spot are equally quick. */
    private static final double AS_QUICK_MINUTES = 1;
    private static final int OPTIONAL_AT_MOST = 12;

    private final Decisions weights;
    private final Map<String, Family> families;
    private final Map<String, Passed> passed = new LinkedHashMap<>();

    Worth(Decisions weights, Map<String, Family> families) {
        this.weights = weights;
        this.families = families;
    }

    /** Rungs in order, and what was passed over on the way. */
    record Chosen(List<Choice> rungs, List<Passed> passed) {
    }

    Chosen choose(List<Choice> ordered, Belief belief, double canWaitMinutes) {
        List<Choice> left = new ArrayList<>(ordered);
        left.removeIf(c -> pointless(c, belief));
        Set<String> twins = new HashSet<>();
        for (Choice one : left) {
            left.stream().filter(other -> !twins.contains(other.id()) && replaces(other, one, belief)).findFirst()
                    .ifPresent(other -> {
                        twins.add(one.id());
                        pass(one, "same again", other.family().equals(one.family()) && isAsQuick(other, one)
                                ? "same chemistry as " + other.id() + ", which is no harsher, no less likely and no slower"
                                : "same mechanism as " + other.id() + ", which is gentler and no less likely");
                    });
        }
        left.removeIf(c -> twins.contains(c.id()));
        left.removeIf(c -> unearned(c, belief));
        left.removeAll(harsherForLess(left, belief));
        Set<String> forced = new HashSet<>();
        for (Choice choice : left) {
            if (choice.mean(belief) >= REAL_FROM && !choice.takesFilm()
                    && (!choice.isSlow() || choice.dwellMinutes() <= canWaitMinutes)) {
                forced.add(choice.id());
                finer(choice, left).forEach(f -> forced.add(f.id()));
            }
        }
        List<Choice> optional = left.stream().filter(c -> !forced.contains(c.id())).toList();
        if (optional.size() > OPTIONAL_AT_MOST) {
            List<Choice> best = optional.stream().sorted(Comparator.comparingDouble(
                    (Choice c) -> -c.mean(belief) / Math.max(0.1, c.cost()))).toList();
            for (Choice dropped : best.subList(OPTIONAL_AT_MOST, best.size())) {
                left.remove(dropped);
                pass(dropped, "cost", "twelve others promise more for their minutes");
            }
        }
        Set<String> chosen = cheapest(left, forced, belief);
        List<Choice> rungs = enough(left.stream().filter(c -> chosen.contains(c.id())).toList(), belief);
        for (Choice out : left) {
            if (!chosen.contains(out.id())) {
                passForCost(out, left, chosen, belief);
            }
        }
        return new Chosen(rungs, List.copyOf(passed.values()));
    }

    private boolean pointless(Choice choice, Belief belief) {
        double mean = choice.mean(belief);
        if (mean >= POINTLESS_BELOW) {
            return false;
        }
        pass(choice, "pointless", "chance " + Figures.text(mean) + ", under " + Figures.text(POINTLESS_BELOW));
        return true;
    }

    /** Whether the other does all that this one does, at no price. */
    private boolean replaces(Choice other, Choice one, Belief belief) {
        return other != one && !isFinerThan(one, other) && other.own().compareTo(one.own()) < 0
                && other.ifFresh() >= one.ifFresh() && other.ifHardened() >= one.ifHardened()
                && (one.asks() || !other.asks())
                && (other.family().equals(one.family()) && isAsQuick(other, one) || leavesNothingTo(other, one, belief));
    }

    private static boolean isAsQuick(Choice other, Choice one) {
        return other.workMinutes() + other.dwellMinutes()
                <= one.workMinutes() + one.dwellMinutes() + AS_QUICK_MINUTES;
    }

    /**
     * One mechanism again, by a gentler one that comes first: if that failed, this one has half its chance.
     * So it goes if it was the lesser chance from the start, or unlikely; a second solvent also where half is no real one.
     */
    private static boolean leavesNothingTo(Choice other, Choice one, Belief belief) {
        ToolKind tool = one.use().tool().kind();
        Mechanism mechanism = one.method().mechanism();
        double mean = one.mean(belief);
        return other.method().mechanism().actsLike(mechanism) && !other.isSlow()
                && (tool == ToolKind.NONE || tool == ToolKind.CLOTH || tool == other.use().tool().kind())
                && ((mechanism.kin() == Mechanism.DISSOLVE ? mean / 2 : mean) < REAL_FROM
                || other.ifFresh() > one.ifFresh() && other.ifHardened() > one.ifHardened());
    }

    private boolean unearned(Choice choice, Belief belief) {
        double mean = choice.mean(belief);
        if (mean >= REAL_FROM || !(choice.takesFilm() || choice.asks())) {
            return false;
        }
        pass(choice, "earned", (choice.takesFilm() ? "takes film" : "needs agreement") + " for a chance of "
                + Figures.text(mean) + ", under " + Figures.text(REAL_FROM));
        return true;
    }

    /** Unlikely ones after a likelier gentler one, unless they are the finer grade of a likely one. */
    private List<Choice> harsherForLess(List<Choice> left, Belief belief) {
        List<Choice> out = new ArrayList<>();
        boolean real = false;
        for (Choice one : left) {
            double mean = one.mean(belief);
            if (mean >= REAL_FROM) {
                real |= !one.isSlow();
            } else if (real && left.stream().noneMatch(c -> isFinerThan(one, c) && c.mean(belief) >= REAL_FROM)) {
                out.add(one);
                pass(one, "harsher for less", "chance " + Figures.text(Figures.thousandths(mean)) + ", under "
                        + Figures.text(REAL_FROM) + ", after a gentler one with more");
            }
        }
        return out;
    }

    private boolean isGraded(Choice choice) {
        Family family = families.get(choice.family());
        return family != null && family.graded();
    }

    /** By the film they take from clear coat: on glass, which loses none, a fine clay is still the finer one. */
    private boolean isFinerThan(Choice one, Choice other) {
        return isGraded(one) && one.family().equals(other.family())
                && one.method().severity().filmMicrons() < other.method().severity().filmMicrons();
    }

    private List<Choice> finer(Choice choice, List<Choice> among) {
        return among.stream().filter(c -> isFinerThan(c, choice)).toList();
    }

    /**
     * The rungs until next to nothing is left for the next one. A second try of one mechanism counts half its chance, as
     * what one of them leaves the other mostly leaves too.
     */
    private List<Choice> enough(List<Choice> rungs, Belief belief) {
        Set<Mechanism> kinds = new HashSet<>();
        double fresh = belief.fresh();
        double hardened = belief.hardened();
        List<Choice> kept = new ArrayList<>();
        for (Choice rung : rungs) {
            if (fresh + hardened < ENOUGH_BELOW) {
                pass(rung, "enough", "the gentler rungs leave " + Figures.text(Figures.thousandths(fresh + hardened)) + ", under "
                        + Figures.text(ENOUGH_BELOW));
                continue;
            }
            double share = kinds.add(rung.method().mechanism().kin()) ? 1 : 0.5;
            fresh *= 1 - share * rung.ifFresh();
            hardened *= 1 - share * rung.ifHardened();
            kept.add(rung);
        }
        return List.copyOf(kept);
    }

    /** What must be in is in; of the rest, whatever lowers the expected cost. */
    private Set<String> cheapest(List<Choice> left, Set<String> forced, Belief belief) {
        long always = 0;
        long[] needs = new long[left.size()];
        for (int i = 0; i < left.size(); i++) {
            if (forced.contains(left.get(i).id())) {
                always |= 1L << i;
            }
            for (Choice finer : finer(left.get(i), left)) {
                needs[i] |= 1L << left.indexOf(finer);
            }
        }
        long best = LeastCostSubset.of(left.stream().map(Choice::asTry).toList(), always, needs, belief,
                weights.value("handing-over"));
        Set<String> chosen = new HashSet<>();
        for (int i = 0; i < left.size(); i++) {
            if ((best & 1L << i) != 0) {
                chosen.add(left.get(i).id());
            }
        }
        return chosen;
    }

    private double cost(List<Choice> left, Set<String> ids, Belief belief) {
        return ExpectedCost.of(left.stream().filter(c -> ids.contains(c.id())).map(Choice::asTry).toList(), belief,
                weights.value("handing-over"));
    }

    private void passForCost(Choice out, List<Choice> left, Set<String> chosen, Belief belief) {
        Set<String> with = new HashSet<>(chosen);
        with.add(out.id());
        String figures = "expected cost " + Figures.text(Math.round(cost(left, with, belief) * 10) / 10.0)
                + " min with it, " + Figures.text(Math.round(cost(left, chosen, belief) * 10) / 10.0) + " without";
        List<Choice> missing = finer(out, left).stream().filter(f -> !chosen.contains(f.id())).toList();
        if (out.isSlow()) {
            pass(out, "slow", "stays " + Figures.text(out.dwellMinutes()) + " min; " + figures);
        } else if (!missing.isEmpty()) {
            pass(out, "finest first", "the finer " + missing.get(0).id() + " is not worth it either; " + figures);
        } else {
            pass(out, "cost", figures);
        }
    }

    private void pass(Choice choice, String step, String why) {
        passed.put(choice.id(), new Passed(choice, step, why));
    }
}
