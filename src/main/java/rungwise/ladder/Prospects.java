package rungwise.ladder;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.Contaminant;
import rungwise.knowledge.Method;
import rungwise.knowledge.SurfaceKind;
import rungwise.question.Question;
import rungwise.science.Belief;

/** What the ladder would be if the deposit were known, for each contaminant it might be; each is asked for once. */
final class Prospects {
    private static final double HOT_PANEL_C = 45;

    private final Advisor advisor;
    private final Question question;
    private final ChanceTable table;
    private final Map<String, Prospect> known = new HashMap<>();
    private SurfaceKind surface = SurfaceKind.PAINT;

    Prospects(Advisor advisor, Question question, ChanceTable table) {
        this.advisor = advisor;
        this.question = question;
        this.table = table;
    }

    /**
     * An answer with what a mixture needs of it at hand.
     *
     * @param rungs   what would be worth trying, by method
     * @param order   every candidate, by method, in its fixed order; no log moves it
     * @param chances of each method, after the tries
     */
    record Prospect(Advisor.Told told, Map<String, Answer.Rung> rungs, Map<String, Choice> order, Set<String> barred,
                    Map<String, Double> chances) {
        Answer answer() {
            return told.answer();
        }

        /** The method written out as a rung with all that this contaminant asks of it. */
        Answer.Rung written(String method) {
            return told.write().apply(order.get(method));
        }

        /** Recorded tries behind its chance, each weighed by the belief in the state it is for. */
        double tries(String method) {
            Likely likely = order.get(method).likely();
            return told.ladder().belief().mean(likely.triesFresh(), likely.triesHardened());
        }
    }

    Prospect of(String contaminant) {
        return known.computeIfAbsent(contaminant, this::ask);
    }

    /** The chance of a method on a contaminant, also on one that is too unlikely to be asked about in full. */
    double chance(String contaminant, String method) {
        Prospect asked = known.get(contaminant);
        if (asked != null && asked.barred().contains(method)) {
            return 0;
        }
        return Optional.ofNullable(asked).map(p -> p.chances().get(method)).orElseGet(() -> untried(contaminant, method));
    }

    /** The chance that a method had before anything was tried. */
    double untried(String contaminant, String method) {
        Contaminant deposit = advisor.reckoned().contaminants().get(contaminant);
        Method removes = advisor.reckoned().methods().get(method);
        Likely likely = table.of(deposit, removes, surface);
        return belief(deposit).mean(likely.ifFresh(), likely.ifHardened());
    }

    private Belief belief(Contaminant deposit) {
        if (question.ageHours().isEmpty()) {
            return deposit.hardens().isNever() ? new Belief(0) : Belief.UNKNOWN;
        }
        return Belief.byAge(question.ageHours().getAsDouble(), Belief.hoursAt(deposit.hardens().cool(),
                deposit.hardens().hot(), question.facts().warmestPanelC().orElse(HOT_PANEL_C)));
    }

    private Prospect ask(String contaminant) {
        Advisor.Told told = advisor.told(question.about(contaminant), false, table);
        Answer answer = told.answer();
        surface = told.surface();
        Map<String, Answer.Rung> rungs = new HashMap<>();
        Map<String, Double> chances = new HashMap<>();
        answer.passedOver().forEach(p -> chances.put(p.method(), p.chance()));
        Map<String, Choice> order = new LinkedHashMap<>();
        told.order().forEach(c -> {
            order.put(c.id(), c);
            chances.put(c.id(), c.mean(told.ladder().belief()));
        });
        answer.rungs().forEach(r -> rungs.put(r.method(), r));
        Set<String> barred = new LinkedHashSet<>();
        answer.barred().forEach(b -> barred.add(b.method()));
        return new Prospect(told, rungs, order, barred, chances);
    }
}
