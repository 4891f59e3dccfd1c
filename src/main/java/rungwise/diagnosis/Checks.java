package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.diagnosis.Identification.Check;
import rungwise.diagnosis.Identification.NextCheck;
import rungwise.diagnosis.Identification.Outcome;
import rungwise.diagnosis.Identification.Withheld;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Inspection;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.surface.Trait;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Choice;
import rungwise.ladder.Ladder;
import rungwise.ladder.Suspects;
import rungwise.question.Question;
import rungwise.text.Texts;

/**
 * The best next check: the one that is expected to lower the ladder's expected minutes most, its own taken off. A
 * check that touches the surface with an agent is held to the bars of the method whose agent it borrows.
 */
final class Checks {
    private final Advisor advisor;
    private final KnowledgeBase base;
    private final Weighing weighing;
    private final Question question;
    private final Noted noted;
    private final ChanceTable chances;
    private final Suspects bySigns;
    private final Map<String, Double> belief;

    Checks(Advisor advisor, Weighing weighing, Question question, Noted noted, Suspects bySigns, ChanceTable chances) {
        this.advisor = advisor;
        this.base = advisor.knowledge();
        this.weighing = weighing;
        this.question = question;
        this.noted = noted;
        this.chances = chances;
        this.bySigns = bySigns;
        this.belief = bySigns.afterTries(question, base).belief();
    }

    /**
     * What a belief leads to, in short.
     *
     * @param minutes expected worker minutes, referral included
     * @param first   the first rung; empty where work is held or none is left
     */
    private record Outlook(double minutes, Optional<String> first, boolean held) {
    }

    private Outlook outlook(Suspects suspects) {
        Ladder ladder = advisor.ladder(question, suspects, false, chances);
        boolean held = ladder.situation().isStopped();
        return new Outlook(held ? base.decisions().value(DecisionId.HANDING_OVER) : ladder.cost(), held ? Optional.empty()
                : ladder.rungs().stream().findFirst().map(Choice::id), held);
    }

    NextCheck best() {
        Outlook now = outlook(bySigns);
        Map<String, String> barred = barred();
        List<Withheld> withheld = new ArrayList<>();
        List<Check> worth = new ArrayList<>();
        boolean changes = false;
        for (Inspection check : base.signs().checks().values()) {
            List<Observation> outcomes = outcomes(check);
            if (!check.offered() || outcomes.isEmpty()) {
                continue;
            }
            Optional<String> why = withheld(check, barred, now.held());
            if (why.isPresent() && !relevant(outcomes)) {
                continue;
            }
            if (why.isPresent()) {
                withheld.add(new Withheld(check.id(), check.name(), why.get()));
                continue;
            }
            Check valued = valued(check, outcomes, now);
            changes |= valued.outcomes().stream().anyMatch(o -> !o.nextMethod().equals(now.first()));
            if (valued.savesMinutes() >= base.decisions().value(DecisionId.WORTH_A_CHECK)) {
                worth.add(valued);
            }
        }
        Optional<Check> best = worth.stream().max(Comparator.comparingDouble(Check::savesMinutes)
                .thenComparing(Check::id, Comparator.reverseOrder()));
        return new NextCheck(best, best.map(Check::how).orElse(changes
                ? Texts.said("diagnosis.no-check-worth-it")
                : Texts.said("diagnosis.no-check-changes")), withheld);
    }

    private List<Observation> outcomes(Inspection check) {
        List<Observation> all = base.observations().values().stream().filter(o -> o.seenBy().equals(check.id()))
                .toList();
        if (all.stream().anyMatch(noted::knows)) {
            return List.of();
        }
        return all.stream().filter(Observation::speaks).toList();
    }

    /** Whether it would say anything of what is believed at all. */
    private boolean relevant(List<Observation> outcomes) {
        double listed = base.decisions().value(DecisionId.LISTED_FROM);
        return outcomes.stream().anyMatch(o -> o.pointsTo().stream().anyMatch(c -> belief.getOrDefault(c, 0.0) >= listed));
    }

    private Map<String, String> barred() {
        String likeliest = belief.entrySet().stream().max(Map.Entry.<String, Double>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey())).orElseThrow().getKey();
        List<String> methods = base.signs().checks().values().stream().flatMap(c -> c.method().stream()).distinct()
                .toList();
        Map<String, String> barred = new LinkedHashMap<>();
        Answer answer = advisor.answer(question.about(likeliest).wanting(methods), false);
        answer.barred().forEach(b -> barred.put(b.method(), b.because().get(0).says()));
        return barred;
    }

    private Optional<String> withheld(Inspection check, Map<String, String> barred, boolean held) {
        if (check.method().isPresent() && held) {
            return Optional.of(Texts.said("diagnosis.held"));
        }
        if (check.method().filter(barred::containsKey).isPresent()) {
            return Optional.of(barred.get(check.method().get()));
        }
        if (!check.notOn().isEmpty() && question.surface().contains(Question.UNKNOWN)) {
            return check.method().map(m -> Texts.said("diagnosis.surface-unknown"));
        }
        Set<Trait> here = new TreeSet<>();
        question.surface().stream().filter(base.surfaces()::containsKey)
                .forEach(s -> here.addAll(base.surfaces().get(s).traits()));
        noted.seen().forEach(o -> o.treatAs().ifPresent(s -> here.addAll(base.surfaces().get(s).traits())));
        return check.notOn().stream().filter(here::contains).findFirst().map(t -> Texts.said("diagnosis.left-alone", "trait",
                t.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')));
    }

    private Check valued(Inspection check, List<Observation> outcomes, Outlook now) {
        List<Outcome> all = new ArrayList<>();
        double expected = 0;
        double[] shares = new double[outcomes.size() + 1];
        for (Map.Entry<String, Double> one : belief.entrySet()) {
            double[] rates = weighing.outcomes(outcomes, one.getKey());
            for (int i = 0; i < shares.length; i++) {
                shares[i] += one.getValue() * rates[i];
            }
        }
        for (int i = 0; i <= outcomes.size(); i++) {
            double share = shares[i];
            if (share < base.decisions().value(DecisionId.RARE_OUTCOME)) {
                expected += share * now.minutes();
                continue;
            }
            Noted then = i < outcomes.size() ? noted.with(outcomes.get(i)) : noted.without(outcomes);
            Suspects afterwards = weighing.suspects(then);
            Map<String, Double> after = afterwards.afterTries(question, base).belief();
            Outlook outlook = outlook(afterwards);
            expected += share * outlook.minutes();
            Map.Entry<String, Double> top = after.entrySet().stream().max(Map.Entry.<String, Double>comparingByValue()
                    .thenComparing(Map.Entry.comparingByKey())).orElseThrow();
            all.add(new Outcome(i < outcomes.size() ? Optional.of(outcomes.get(i).id()) : Optional.empty(),
                    i < outcomes.size() ? outcomes.get(i).says() : Texts.said("diagnosis.none-seen"), Figures.thousandths(share),
                    top.getKey(), Figures.thousandths(top.getValue()), outlook.first()));
        }
        return new Check(check.id(), check.name(), check.how(), check.minutes(),
                Figures.thousandths(now.minutes() - expected - check.minutes() * base.decisions().value(DecisionId.MINUTE_OF_WORK)), all);
    }
}
