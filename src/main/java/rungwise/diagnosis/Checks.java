package rungwise.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import rungwise.diagnosis.Identification.Check;
import rungwise.diagnosis.Identification.NextCheck;
import rungwise.diagnosis.Identification.Outcome;
import rungwise.diagnosis.Identification.Withheld;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.deposit.Inspection;
import rungwise.knowledge.deposit.Observation;
import rungwise.knowledge.surface.Trait;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Suspects;
import rungwise.question.Question;
import rungwise.text.Texts;

/**
 * The best next check by what its answer is worth: expected minutes, damage and wrong bars of what would be done now, less those of what
 * would be done knowing the answer, less its own minutes; or for the name, how much surer it makes. What would be done about each suspect
 * is worked out once, and a check only moves belief among them. A check that touches the surface with an agent is held to the bars
 * of the method whose agent it borrows.
 */
final class Checks {
    private final KnowledgeBase base;
    private final Decisions decisions;
    private final Weighing weighing;
    private final Question question;
    private final Noted noted;
    private final boolean forName;
    private final Map<String, Double> belief;
    private final List<Plan> suspects = new ArrayList<>();
    private final double[] share;

    Checks(Plans plans, KnowledgeBase base, Weighing weighing, Spot spot, Noted noted, Suspects bySigns, ChanceTable chances) {
        this.base = base;
        this.decisions = base.decisions();
        this.weighing = weighing;
        this.question = spot.question();
        this.noted = noted;
        this.forName = spot.forName();
        Suspects now = bySigns.afterTries(question, base);
        this.belief = now.belief();
        Function<String, Plan> here = plans.on(question, chances);
        double[] weights = likeliest(now).mapToDouble(e -> {
            suspects.add(here.apply(e.getKey()));
            return e.getValue();
        }).toArray();
        this.share = normal(weights);
    }

    private Stream<Map.Entry<String, Double>> likeliest(Suspects now) {
        return now.belief().entrySet().stream().limit((long) decisions.value(DecisionId.SUSPECTS_WEIGHED))
                .filter(e -> e.getValue() >= decisions.value(DecisionId.LISTED_FROM) || e.getKey().equals(now.likeliest()));
    }

    private static double[] normal(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(w -> w / sum).toArray();
    }

    /**
     * What a belief leads to, in short.
     *
     * @param minutes expected worker minutes, damage and referral included
     * @param first   the first step; empty where work is held or none is left
     */
    private record Outlook(double minutes, Optional<String> first, boolean held) {
    }

    /** What would be done: the cheapest of what would be done about one of the suspects, less what one that counts forbids. */
    private Outlook outlook(double[] shares) {
        Set<String> barred = new HashSet<>();
        int likeliest = 0;
        for (int i = 0; i < shares.length; i++) {
            likeliest = shares[i] > shares[likeliest] ? i : likeliest;
        }
        for (int i = 0; i < shares.length; i++) {
            if (suspects.get(i).held() && shares[i] >= decisions.value(DecisionId.HAZARD_COUNTS)) {
                return new Outlook(decisions.value(DecisionId.HANDING_OVER), Optional.empty(), true);
            }
            if (i == likeliest || shares[i] >= decisions.value(DecisionId.BAR_COUNTS)) {
                barred.addAll(suspects.get(i).barred().keySet());
            }
        }
        Outlook best = new Outlook(Double.POSITIVE_INFINITY, Optional.empty(), false);
        for (int i = 0; i < shares.length; i++) {
            if (i != likeliest && shares[i] < decisions.value(DecisionId.LISTED_FROM)) {
                continue;
            }
            List<Plan.Step> steps = suspects.get(i).steps().stream().filter(s -> !barred.contains(s.method())).toList();
            double minutes = 0;
            for (int j = 0; j < shares.length && minutes < best.minutes(); j++) {
                minutes += shares[j] == 0 ? 0 : shares[j] * suspects.get(j).minutes(steps, decisions);
            }
            if (minutes < best.minutes()) {
                best = new Outlook(minutes, steps.stream().findFirst().map(Plan.Step::method), false);
            }
        }
        return best;
    }

    /**
     * A check with what it is worth.
     *
     * @param saves   minutes beyond its own
     * @param surer   by how much likelier the first name is then expected to be
     * @param changes whether what is done first may change
     */
    private record Worth(Inspection check, List<Observation> outcomes, double saves, double surer, boolean changes) {
    }

    NextCheck best() {
        Outlook now = outlook(share);
        List<Withheld> withheld = new ArrayList<>();
        List<Worth> all = new ArrayList<>();
        for (Inspection check : base.signs().checks().values()) {
            List<Observation> outcomes = open(check);
            if (outcomes.isEmpty()) {
                continue;
            }
            Optional<String> why = withheld(check, now.held());
            if (why.isPresent()) {
                if (relevant(outcomes)) {
                    withheld.add(new Withheld(check.id(), check.name(), why.get()));
                }
                continue;
            }
            all.add(worth(check, outcomes, now));
        }
        Optional<Worth> best = all.stream().filter(this::isWorthIt).max(Comparator.comparingDouble((Worth w) -> forName ? w.surer() : w.saves())
                .thenComparing(w -> w.check().id(), Comparator.reverseOrder()));
        return new NextCheck(best.map(this::written), best.map(w -> w.check().how()).orElse(Texts.said(forName ? "diagnosis.no-check-names"
                : all.stream().anyMatch(Worth::changes) ? "diagnosis.no-check-worth-it" : "diagnosis.no-check-changes")), withheld);
    }

    private boolean isWorthIt(Worth worth) {
        return forName ? worth.surer() >= decisions.value(DecisionId.NAME_SURER) : worth.saves() >= decisions.value(DecisionId.WORTH_A_CHECK);
    }

    /** What each check that could be made here is expected to save, beyond its own minutes. */
    Map<String, Double> saving() {
        Outlook now = outlook(share);
        Map<String, Double> saving = new TreeMap<>();
        base.signs().checks().values().stream().filter(c -> !open(c).isEmpty() && withheld(c, now.held()).isEmpty())
                .forEach(c -> saving.put(c.id(), worth(c, open(c), now).saves()));
        return saving;
    }

    private Worth worth(Inspection check, List<Observation> outcomes, Outlook now) {
        double[][] rates = new double[share.length][];
        for (int i = 0; i < share.length; i++) {
            rates[i] = weighing.rates(outcomes, suspects.get(i).deposit());
        }
        double minutes = 0;
        double right = 0;
        boolean changes = false;
        for (int outcome = 0; outcome <= outcomes.size(); outcome++) {
            double[] then = new double[share.length];
            for (int i = 0; i < then.length; i++) {
                then[i] = share[i] * rates[i][outcome];
            }
            double comes = Arrays.stream(then).sum();
            if (comes > 0) {
                Outlook outlook = outlook(normal(then));
                minutes += comes * outlook.minutes();
                right += Arrays.stream(then).max().orElse(0);
                changes |= comes >= decisions.value(DecisionId.RARE_OUTCOME) && !outlook.first().equals(now.first());
            }
        }
        return new Worth(check, outcomes, now.minutes() - minutes - check.minutes() * decisions.value(DecisionId.MINUTE_OF_WORK),
                right - Arrays.stream(share).max().orElse(1), changes);
    }

    /** What a check may still show: nothing of it was looked for yet. */
    private List<Observation> open(Inspection check) {
        return !check.offered() || weighing.seenBy(check.id()).stream().anyMatch(noted::knows) ? List.of() : weighing.outcomes(check.id());
    }

    /** Whether it would say anything of what is believed at all. */
    private boolean relevant(List<Observation> outcomes) {
        double listed = decisions.value(DecisionId.LISTED_FROM);
        return outcomes.stream().anyMatch(o -> o.pointsTo().stream().anyMatch(c -> belief.getOrDefault(c, 0.0) >= listed));
    }

    private Optional<String> withheld(Inspection check, boolean held) {
        if (check.method().isPresent() && held) {
            return Optional.of(Texts.said("diagnosis.held"));
        }
        Optional<String> barred = check.method().flatMap(this::barred);
        if (barred.isPresent()) {
            return barred;
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

    /** Why a method is barred by what counts of all that it may be. */
    private Optional<String> barred(String method) {
        return suspects.stream().filter(p -> p == suspects.get(0) || belief.get(p.deposit()) >= decisions.value(DecisionId.BAR_COUNTS))
                .flatMap(p -> Optional.ofNullable(p.barred().get(method)).stream()).findFirst();
    }

    private Check written(Worth worth) {
        List<Outcome> all = new ArrayList<>();
        List<Observation> outcomes = worth.outcomes();
        double[] shares = new double[outcomes.size() + 1];
        belief.forEach((id, now) -> {
            double[] rates = weighing.rates(outcomes, id);
            for (int i = 0; i < shares.length; i++) {
                shares[i] += now * rates[i];
            }
        });
        for (int i = 0; i <= outcomes.size(); i++) {
            if (shares[i] < decisions.value(DecisionId.RARE_OUTCOME)) {
                continue;
            }
            Noted then = i < outcomes.size() ? noted.with(outcomes.get(i)) : noted.without(outcomes);
            Suspects after = weighing.suspects(then).afterTries(question, base);
            Optional<String> first = outlook(normal(suspects.stream().mapToDouble(p -> after.belief().getOrDefault(p.deposit(), 0.0)).toArray())).first();
            all.add(new Outcome(i < outcomes.size() ? Optional.of(outcomes.get(i).id()) : Optional.empty(),
                    i < outcomes.size() ? outcomes.get(i).says() : Texts.said("diagnosis.none-seen"), Figures.thousandths(shares[i]),
                    after.likeliest(), Figures.thousandths(after.belief().get(after.likeliest())), first));
        }
        Inspection check = worth.check();
        return new Check(check.id(), check.name(), check.how(), check.minutes(), Figures.thousandths(worth.saves()), all);
    }
}
