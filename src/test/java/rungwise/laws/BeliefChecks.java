package rungwise.laws;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.rules.said.Because;

/**
 * What a law finds wrong with an answer over a belief. What counts of a suspect is asked of the answer about that suspect
 * alone, so that the mixture is not trusted to have heard it.
 */
final class BeliefChecks {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    /** Harm to people counts from here, what a suspect forbids from there: as the trade decides, not read off the program. */
    static final double HAZARD_FROM = 0.02;
    static final double BAR_FROM = 0.10;

    private BeliefChecks() {
    }

    /** The answers about each suspect alone that is believed enough. */
    private static List<Placed> alone(Placed answer, double from, boolean explained) {
        return answer.suspects(from).stream().map(answer.question()::about).map(q -> explained ? Placed.named(q) : Placed.plain(q)).toList();
    }

    /** Law 2: barred by the mixture or by any suspect that counts, and offered or named around a rung all the same. */
    static List<String> barredButNamed(Placed answer) {
        List<Placed> alone = alone(answer, BAR_FROM, true);
        Set<String> barred = barred(answer, alone, true);
        Set<String> beyondTries = barred(answer, alone, false);
        List<String> wrong = new ArrayList<>();
        answer.offered().map(Placed.Offer::method).filter(barred::contains).forEach(m -> wrong.add("rung " + m));
        // first aid for one suspect asks neither shelf nor weather, whoever else it may be
        boolean firstAid = answer.next().action().equals("flush") && alone(answer, 0, false).stream().anyMatch(a -> a.next().action().equals("flush")
                && a.next().method().equals(answer.next().method()));
        answer.next().method().filter(m -> !firstAid && !answer.next().action().equals("wait")).filter(barred::contains)
                .ifPresent(m -> wrong.add("next " + answer.next().action() + " " + m));
        around("before", answer.before().stream().map(Placed.Step::name), beyondTries, wrong);
        around("after", answer.after().stream().map(Placed.Step::name), beyondTries, wrong);
        answer.offered().forEach(r -> {
            around("bridge before " + r.method(), r.bridges().stream().flatMap(b -> b.steps().stream()), beyondTries, wrong);
            around("if cleared", r.follows().stream(), beyondTries, wrong);
            around("if marked", r.corrections().stream(), beyondTries, wrong);
        });
        return wrong;
    }

    /**
     * Law 2: what a suspect that counts forbids is not "not worth it". Each suspect alone is asked as the mixture is: what could do nothing
     * to any of them is judged by no rule of today in either.
     */
    static List<String> barredButPassedOver(Placed answer) {
        Set<String> barred = barred(answer, alone(answer, BAR_FROM, false), true);
        return answer.left().stream().filter(l -> l.place() == Placed.Place.PASSED_OVER && barred.contains(l.method()))
                .map(l -> "passed over " + l.method()).toList();
    }

    private static Set<String> barred(Placed answer, List<Placed> alone, boolean usedUpToo) {
        Set<String> barred = new TreeSet<>(answer.barred(usedUpToo));
        alone.forEach(a -> barred.addAll(a.barred(usedUpToo)));
        return barred;
    }

    private static void around(String place, Stream<String> steps, Set<String> barred, List<String> wrong) {
        steps.filter(barred::contains).forEach(s -> wrong.add(place + ": " + s));
    }

    /** Law 7: rungs of which nobody says what follows, or whose residue nothing takes away. */
    static List<String> unfollowed(Placed answer) {
        List<String> after = answer.after().stream().map(Placed.Step::name).toList();
        List<String> wrong = new ArrayList<>();
        for (Placed.Offer rung : answer.rungs()) {
            if (rung.follows().isEmpty() && after.isEmpty()) {
                wrong.add(rung.method() + " says nothing of what follows");
            }
            Agent agent = KNOWN.agentOf(KNOWN.methods().get(rung.method()));
            if (agent.residueRinse() > 0 && Stream.concat(rung.follows().stream(), after.stream())
                    .noneMatch(s -> Checks.TAKES_RESIDUE.contains(s) || Checks.WAITS.contains(s))) {
                wrong.add(rung.method() + " leaves what nothing takes away");
            }
        }
        return wrong;
    }

    /** Law 8: what stands without a reason, or with one that says nothing or names no source though it is published. */
    static List<String> unreasoned(Placed answer) {
        List<String> wrong = new ArrayList<>();
        for (Placed.Said said : answer.said()) {
            if (said.because().isEmpty()) {
                wrong.add(said.what() + " has no because");
            }
            for (Because b : said.because()) {
                if (b.says() == null || b.says().isBlank() || b.reason().basis() == null
                        || b.reason().basis() == Basis.PUBLISHED && b.allSources().isEmpty()) {
                    wrong.add(said.what() + ": " + b.id() + " says nothing, or has no basis or source");
                }
            }
        }
        return wrong;
    }

    /** Law 9: what agent, tool, method and every suspect that may harm demand, and what each of them alone asks for. */
    static List<String> unprotected(Placed answer) {
        List<Placed> alone = alone(answer, HAZARD_FROM, false);
        List<String> suspects = answer.suspects(HAZARD_FROM);
        List<String> wrong = new ArrayList<>();
        answer.offered().forEach(rung -> {
            Method method = KNOWN.methods().get(rung.method());
            Set<String> demanded = new TreeSet<>(KNOWN.agentOf(method).ppe());
            demanded.addAll(KNOWN.toolOf(method).ppe());
            demanded.addAll(method.ppe());
            suspects.forEach(id -> demanded.addAll(KNOWN.contaminants().get(id).ppe()));
            alone.forEach(a -> a.offered().filter(r -> r.method().equals(rung.method())).forEach(r -> demanded.addAll(r.protection())));
            demanded.removeAll(rung.protection());
            demanded.forEach(d -> wrong.add(rung.method() + " without " + d));
        });
        return wrong;
    }

    /** Whether a suspect other than the likeliest asks for something to wear that the likeliest does not. */
    static boolean otherAsksForMore(Placed answer) {
        List<String> suspects = answer.suspects(HAZARD_FROM);
        Set<String> first = new HashSet<>(KNOWN.contaminants().get(suspects.get(0)).ppe());
        return !answer.rungs().isEmpty() && suspects.stream().skip(1).anyMatch(id -> !first.containsAll(KNOWN.contaminants().get(id).ppe()));
    }

    /** Law 12: bars and protection that went with a fact. */
    static List<String> lost(Placed with, Placed without, String fact) {
        Set<String> barred = with.barred(true);
        Map<String, Placed.Offer> before = with.offered().collect(Collectors.toMap(Placed.Offer::method, r -> r, (one, two) -> one));
        List<String> lost = new ArrayList<>();
        without.offered().forEach(rung -> {
            if (barred.contains(rung.method()) && !rung.gates().containsValue("missing")) {
                lost.add("without " + fact + " the bar of " + rung.method() + " goes");
            }
            if (before.containsKey(rung.method())) {
                Set<String> items = new TreeSet<>(before.get(rung.method()).protection());
                items.removeAll(rung.protection());
                items.forEach(i -> lost.add("without " + fact + " " + rung.method() + " goes without " + i));
            }
        });
        return lost;
    }
}
