package rungwise.ladder;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.Chances;
import rungwise.knowledge.Contaminant;
import rungwise.science.Belief;

/** What the ladder would be if the deposit were known, for each contaminant it might be; each is asked for once. */
final class Prospects {
    private static final double HOT_PANEL_C = 45;

    private final Advisor advisor;
    private final Question question;
    private final Map<String, Prospect> known = new HashMap<>();

    Prospects(Advisor advisor, Question question) {
        this.advisor = advisor;
        this.question = question;
    }

    /** An answer with what a mixture needs of it at hand. */
    record Prospect(Answer answer, Map<String, Answer.Rung> rungs, Set<String> barred, Map<String, Double> chances) {
    }

    Prospect of(String contaminant) {
        return known.computeIfAbsent(contaminant, this::ask);
    }

    /** The chance of a method on a contaminant that is too unlikely to be asked about in full. */
    double chance(String contaminant, String method) {
        Prospect asked = known.get(contaminant);
        if (asked != null && asked.barred().contains(method)) {
            return 0;
        }
        return Optional.ofNullable(asked).map(p -> p.chances().get(method)).orElseGet(() -> {
            Contaminant deposit = advisor.knowledge().contaminants().get(contaminant);
            Chances chances = deposit.chances(advisor.knowledge().methods().get(method));
            return belief(deposit).mean(chances.fresh().probability(), chances.hardened().probability());
        });
    }

    private Belief belief(Contaminant deposit) {
        if (question.ageHours().isEmpty()) {
            return deposit.hardens().isNever() ? new Belief(0) : Belief.UNKNOWN;
        }
        return Belief.byAge(question.ageHours().getAsDouble(), Belief.hoursAt(deposit.hardens().cool(),
                deposit.hardens().hot(), question.facts().warmestPanelC().orElse(HOT_PANEL_C)));
    }

    private Prospect ask(String contaminant) {
        Answer answer = advisor.answer(question.about(contaminant));
        Map<String, Answer.Rung> rungs = new HashMap<>();
        Map<String, Double> chances = new HashMap<>();
        answer.passedOver().forEach(p -> chances.put(p.method(), p.chance()));
        answer.alternatives().forEach(a -> chances.put(a.method(), a.rung().chance().mean()));
        answer.rungs().forEach(r -> {
            rungs.put(r.method(), r);
            chances.put(r.method(), r.chance().mean());
        });
        Set<String> barred = new LinkedHashSet<>();
        answer.barred().forEach(b -> barred.add(b.method()));
        return new Prospect(answer, rungs, barred, chances);
    }
}
