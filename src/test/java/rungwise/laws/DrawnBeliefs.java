package rungwise.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.question.Question;

/** Questions about a deposit that may be one of two to five, which are met on the same surfaces. */
final class DrawnBeliefs {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();

    private DrawnBeliefs() {
    }

    /** A question without a name, and what it may be. */
    record Case(Map<String, Double> belief, Question question) {
        Placed answer() {
            return Placed.over(belief, question);
        }

        Case asking(Question other) {
            return new Case(belief, other);
        }

        @Override
        public String toString() {
            return belief + " " + DrawnLawsTest.text(question);
        }
    }

    /** A third of them after one to three tries. */
    static Case any(Random random) {
        Case drawn = untried(random);
        return random.nextInt(3) == 0 ? tried(random, drawn) : drawn;
    }

    /** Seven times in eight without anything that holds all work, so that there is a ladder to look at. */
    static Case untried(Random random) {
        boolean wantsLadder = random.nextInt(8) > 0;
        Case drawn = drawn(random, wantsLadder);
        for (int i = 0; wantsLadder && i < 6 && drawn.answer().rungs().isEmpty(); i++) {
            drawn = drawn(random, true);
        }
        return drawn;
    }

    private static Case drawn(Random random, boolean wantsLadder) {
        String surface = DrawnQuestions.pick(random, KNOWN.contaminants().values().stream().flatMap(c -> c.usualSurfaces().stream())
                .distinct().sorted().toList());
        List<String> met = KNOWN.contaminants().values().stream().filter(c -> c.usualSurfaces().contains(surface))
                .filter(c -> !wantsLadder || c.holds().isEmpty() && c.emergency().isEmpty()).map(Contaminant::id).toList();
        List<String> all = KNOWN.contaminants().values().stream().filter(c -> !wantsLadder || c.holds().isEmpty()
                && c.emergency().isEmpty()).map(Contaminant::id).toList();
        int many = 2 + random.nextInt(4);
        Map<String, Double> weights = new TreeMap<>();
        while (weights.size() < many) {
            weights.put(DrawnQuestions.pick(random, weights.isEmpty() && !met.isEmpty() || random.nextBoolean() && met.size() > many
                    ? met : all), Math.pow(random.nextDouble(), 2) + 0.02);
        }
        double sum = weights.values().stream().mapToDouble(w -> w).sum();
        weights.replaceAll((id, w) -> w / sum);
        Question q = DrawnQuestions.drawn(random);
        return new Case(weights, Placed.nameless(new Made(q).surface(List.of(surface)).circumstances(List.of()).made()));
    }

    /** After some of the mixture's own rungs. */
    static Case tried(Random random, Case drawn) {
        List<Placed.Offer> rungs = drawn.answer().rungs();
        List<Question.Tried> tried = new ArrayList<>();
        int until = rungs.isEmpty() ? 0 : 1 + random.nextInt(Math.min(3, rungs.size()));
        for (int i = 0; i < until; i++) {
            tried.add(DrawnQuestions.attempt(rungs.get(i).method(), DrawnQuestions.pick(random, List.of("no-change", "no-change",
                    "partly")), 1, KNOWN.methods().get(rungs.get(i).method()).dwell().from(), true));
        }
        return drawn.asking(new Made(drawn.question()).tried(tried).made());
    }
}
