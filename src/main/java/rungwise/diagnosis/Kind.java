package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.deposit.SignGroup;

/**
 * The words of one kind of sign, and of each deposit how many of those who look say which. Who sees aright says one of its own words, or
 * seldom one that is said of it as well; who errs mostly says a word of what it is taken for.
 */
final class Kind {
    private final SignGroup group;
    private final double error;
    private final List<Observation> words;
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, Look> looks = new TreeMap<>();

    /** What is said of one deposit, word by word: by those who see it aright, and by those who err. */
    private record Look(double[] aright, double[] erring) {
    }

    Kind(SignGroup group, List<Observation> words, KnowledgeBase base) {
        this.group = group;
        this.error = Math.min(1, group.errs() * base.assumptions().value(AssumptionId.OBSERVER_ERRS));
        this.words = words;
        words.forEach(w -> places.put(w.id(), places.size()));
        base.contaminants().keySet().forEach(id -> looks.put(id, new Look(aright(id, base), erring(id, base))));
    }

    List<Observation> words() {
        return words;
    }

    private double[] aright(String deposit, KnowledgeBase base) {
        double[] own = own(deposit);
        double[] fits = evenly(o -> o.fits().contains(deposit));
        if (sum(own) == 0) {
            // of what calls for none of the words many say nothing, and the others say whatever was there by chance
            return sum(fits) > 0 ? fits : times(1 - group.silent(), evenly(o -> true));
        }
        return sum(fits) > 0 ? mix(base.decisions().value(DecisionId.SAID_AS_WELL), fits, own) : own;
    }

    /** Its own words: as stated, and the rest evenly. */
    private double[] own(String deposit) {
        double[] stated = new double[words.size()];
        boolean[] free = new boolean[words.size()];
        int rest = 0;
        for (int i = 0; i < stated.length; i++) {
            OptionalDouble share = words.get(i).shareOn(deposit);
            stated[i] = share.orElse(0);
            free[i] = share.isEmpty() && words.get(i).pointsTo().contains(deposit);
            rest += free[i] ? 1 : 0;
        }
        double left = Math.max(0, 1 - sum(stated));
        for (int i = 0; i < stated.length; i++) {
            stated[i] += free[i] ? left / rest : 0;
        }
        double all = sum(stated);
        return all == 0 ? stated : times(1 / all, stated);
    }

    private double[] erring(String deposit, KnowledgeBase base) {
        double[] any = evenly(o -> true);
        double[] alike = new double[words.size()];
        base.contaminants().get(deposit).recognise().lookAlikes().stream().filter(base.contaminants()::containsKey).map(this::own)
                .forEach(own -> Arrays.setAll(alike, i -> alike[i] + own[i]));
        double all = sum(alike);
        double[] erring = all == 0 ? any : mix(base.decisions().value(DecisionId.TAKEN_FOR_ANOTHER), times(1 / all, alike), any);
        return sum(own(deposit)) == 0 && !group.isWhole() ? times(1 - group.silent(), erring) : erring;
    }

    /** Share of those who look at this deposit that say this word. */
    double share(Observation word, String deposit) {
        return share(List.of(word), deposit);
    }

    /**
     * The same of several words. Where everything has one of them an eye that errs, errs in all that it says; else the most telling counts,
     * as several may hold at once.
     */
    double share(Collection<Observation> said, String deposit) {
        Look look = looks.get(deposit);
        List<Double> each = new ArrayList<>();
        double aright = 1;
        double erring = 1;
        for (Observation word : said) {
            int at = places.get(word.id());
            aright *= look.aright()[at];
            erring *= look.erring()[at];
            each.add((1 - error) * look.aright()[at] + error * look.erring()[at]);
        }
        return group.isWhole() ? (1 - error) * aright + error * erring
                : each.stream().mapToDouble(d -> d).max().orElse(1);
    }

    private double[] evenly(java.util.function.Predicate<Observation> which) {
        double[] all = words.stream().mapToDouble(w -> which.test(w) ? 1 : 0).toArray();
        double sum = sum(all);
        return sum == 0 ? all : times(1 / sum, all);
    }

    private static double sum(double[] all) {
        return Arrays.stream(all).sum();
    }

    private static double[] times(double factor, double[] all) {
        return Arrays.stream(all).map(d -> factor * d).toArray();
    }

    private static double[] mix(double share, double[] one, double[] other) {
        double[] mixed = new double[one.length];
        Arrays.setAll(mixed, i -> share * one[i] + (1 - share) * other[i]);
        return mixed;
    }
}
