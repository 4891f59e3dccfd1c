package rungwise.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.Base;
import rungwise.answer.Answer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.chemistry.Reactive;
import rungwise.knowledge.common.Basis;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.knowledge.method.ToolKind;
import rungwise.knowledge.safety.Respirator;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.knowledge.surface.Trait;
import rungwise.question.Question;
import rungwise.rules.said.Because;

/** What a law finds wrong with an answer; nothing where it holds. */
final class Checks {
    /** Steps that take an agent off again. */
    static final Set<String> TAKES_RESIDUE = Set.of("neutral_rewash", "flood_rinse", "wipe_off", "damp_microfibre",
            "hot_extraction");
    static final Set<String> WAITS = Set.of("cool", "warm", "shade", "cool and shade", "shade and warm");

    private Checks() {
    }

    /** Law 1. */
    static List<String> order(Answer answer) {
        List<String> wrong = new ArrayList<>();
        for (int i = 1; i < answer.rungs().size(); i++) {
            List<Object> earlier = answer.rungs().get(i - 1).severity().key();
            List<Object> later = answer.rungs().get(i).severity().key();
            if (compare(earlier, later) > 0) {
                wrong.add("rung " + i + " " + earlier + " is harsher than rung " + (i + 1) + " " + later);
            }
        }
        return wrong;
    }

    /** Field by field, written here again so that the key's own comparison is not trusted. */
    private static int compare(List<Object> one, List<Object> two) {
        int fields = Math.min(one.size(), two.size());
        for (int i = 0; i < fields; i++) {
            int by = one.get(i) instanceof Boolean b ? Boolean.compare(b, (Boolean) two.get(i))
                    : one.get(i) instanceof Number n ? Double.compare(n.doubleValue(), ((Number) two.get(i)).doubleValue())
                    : one.get(i).toString().compareTo(two.get(i).toString());
            if (by != 0) {
                return by;
            }
        }
        return 0;
    }

    /** Law 7: rungs that clash with what was tried last and carry no bridge after it. */
    static List<String> unbridged(Answer answer, String triedAgent, Set<Reactive> clashing) {
        return answer.rungs().stream().filter(r -> {
            Agent agent = Base.advisor().knowledge().agentOf(Base.advisor().knowledge().methods().get(r.method()));
            return clashing.stream().anyMatch(agent::holds);
        }).filter(r -> r.bridgeBefore().stream().noneMatch(b -> b.after().equals(triedAgent))).map(Answer.Rung::method).toList();
    }

    /** Law 12: what is a rung without a fact though the fact would bar it, and does not ask for it. */
    static List<String> unasked(Answer with, Answer without, String gate) {
        return unasked(with, without, Set.of(gate));
    }

    static List<String> unasked(Answer with, Answer without, Set<String> gates) {
        Set<String> barred = barred(with);
        return offered(without).filter(r -> barred.contains(r.method()))
                .filter(r -> gates.stream().noneMatch(r::isMissing)).map(Answer.Rung::method).toList();
    }

    /** Bars but for those of tries and contact, which are counted for a rung, not for the rinse or wash around it. */
    static Set<String> barredBeyondTries(Answer answer) {
        return answer.barred().stream().filter(b -> b.opensWith()
                .filter(w -> w.contains("spent") || w.contains("next_visit")).isEmpty()).map(Answer.Barred::method)
                .collect(Collectors.toSet());
    }

    /** Law 3: rungs that are graded gentler where the surface is stricter. */
    static List<String> gentler(Answer plain, Answer tight) {
        return tight.rungs().stream().filter(r -> plain.rungs().stream().anyMatch(p -> p.method().equals(r.method())
                && (r.severity().mechanical() < p.severity().mechanical()
                || r.severity().chemical() < p.severity().chemical()
                || r.severity().thermal() < p.severity().thermal()))).map(Answer.Rung::method).toList();
    }

    /** Law 5: offered though its contact or its tries are used up. */
    static List<String> beyondContact(Answer answer) {
        return offered(answer).filter(r -> r.tries().done() >= r.tries().allowed()
                || r.tries().contactMinutesLeft().filter(left -> left <= 0 || left < r.dwell().from()).isPresent())
                .map(r -> r.method() + " " + r.tries()).toList();
    }

    /** Law 5: an abrasive that is next. */
    static List<String> abrasiveNext(Answer answer) {
        if (!List.of("try", "test", "repeat", "prepare").contains(answer.next().action())) {
            return List.of();
        }
        KnowledgeBase known = Base.advisor().knowledge();
        ToolKind tool = known.toolOf(known.methods().get(answer.next().method().orElseThrow())).kind();
        return tool.abrades() || tool == ToolKind.CLAY ? List.of(answer.next().method().get()) : List.of();
    }

    /** Law 7: rungs of which nobody says what follows, or whose residue nothing takes away. */
    static List<String> unfollowed(Answer answer) {
        KnowledgeBase known = Base.advisor().knowledge();
        List<String> wrong = new ArrayList<>();
        for (Answer.Rung rung : answer.rungs()) {
            if (rung.ifCleared().isEmpty() && answer.after().isEmpty()) {
                wrong.add(rung.method() + " says nothing of what follows");
            }
            Agent agent = known.agentOf(known.methods().get(rung.method()));
            if (agent.residueRinse() > 0 && Stream.concat(rung.ifCleared().stream(), answer.after().stream())
                    .noneMatch(s -> TAKES_RESIDUE.contains(s.step()) || WAITS.contains(s.step()))) {
                wrong.add(rung.method() + " leaves what nothing takes away");
            }
        }
        return wrong;
    }

    /** Law 12: gates that go with a fact, where the gate that asks for the fact does not stand instead. */
    static List<String> gatesLost(Answer with, Answer without, Set<String> asks) {
        List<String> lost = new ArrayList<>();
        each(with, without, (before, after) -> {
            Set<String> gates = new TreeSet<>(before.gates().stream().map(Answer.GateState::id).toList());
            after.gates().forEach(g -> gates.remove(g.id()));
            if (asks.stream().noneMatch(after::isMissing)) {
                gates.forEach(g -> lost.add(after.method() + " without " + g));
            }
        });
        return lost;
    }

    /** Law 12: protection that goes with a fact. */
    static List<String> protectionLost(Answer with, Answer without) {
        List<String> lost = new ArrayList<>();
        each(with, without, (before, after) -> {
            Set<String> items = new TreeSet<>(before.ppe().stream().map(Answer.Ppe::item).toList());
            after.ppe().forEach(i -> items.removeIf(item -> covers(i.item(), item)));
            items.forEach(i -> lost.add(after.method() + " without " + i));
        });
        return lost;
    }

    /** The same item, or something to breathe through that keeps out as much and may be worn in more. */
    private static boolean covers(String worn, String item) {
        return worn.equals(item) || respirators(worn).anyMatch(w -> respirators(item).anyMatch(i ->
                w.against().containsAll(i.against()) && w.factor() >= i.factor()));
    }

    private static Stream<Respirator> respirators(String item) {
        return Base.advisor().knowledge().respirators().values().stream().filter(r -> r.ppe().equals(item));
    }

    private static void each(Answer with, Answer without, BiConsumer<Answer.Rung, Answer.Rung> look) {
        Map<String, Answer.Rung> before = offered(with).collect(Collectors.toMap(Answer.Rung::method, r -> r));
        offered(without).filter(r -> before.containsKey(r.method())).forEach(r -> look.accept(before.get(r.method()), r));
    }

    /** Law 13: rungs that take more than may go, their refining and what was taken today counted. */
    static List<String> overBudget(Answer answer) {
        Question.Facts facts = answer.question().facts();
        double budget = facts.clearMicrons().isPresent() ? Math.min(7.5, facts.clearMicrons().getAsDouble() / 4) : 3;
        double gone = answer.question().tried().stream().flatMap(t -> t.method().stream())
                .mapToDouble(m -> Base.advisor().knowledge().methods().get(m).severity().filmMicrons()).sum();
        return offered(answer).filter(r -> r.severity().filmMicrons() > 0 && isClear(answer))
                .filter(r -> taken(r.method()) > budget - gone + 1e-9)
                .map(r -> r.method() + " takes " + taken(r.method()) + " of " + (budget - gone)).toList();
    }

    /** Gel coat is some ten times as thick, and glass and metal have no clear. */
    private static boolean isClear(Answer answer) {
        return answer.question().surface().stream().map(Base.advisor().knowledge().surfaces()::get)
                .allMatch(s -> s.is(Trait.REFINABLE) && s.kind() != SurfaceKind.GEL_COAT);
    }

    /** Law 13: rungs that take more than the budget, their refining counted. */
    static List<String> overBudget(Answer answer, double budgetMicrons) {
        return answer.rungs().stream().filter(r -> taken(r.method()) > budgetMicrons).map(Answer.Rung::method).toList();
    }

    /** Film that a method takes with its obligatory refining, µm. */
    static double taken(String id) {
        KnowledgeBase base = Base.advisor().knowledge();
        Method method = base.methods().get(id);
        return method.severity().filmMicrons() + (method.severity().filmMicrons() >= base.decisions().value("film-that-counts") ? method.correction().stream().map(base.methods()::get)
                .filter(m -> m.family().equals("polish")).mapToDouble(m -> m.severity().filmMicrons()).sum() : 0);
    }

    /** Law 2: rungs, alternatives and next steps that are barred, by whatever rule. */
    static List<String> barredButOffered(Answer answer, Set<String> barred) {
        List<String> wrong = new ArrayList<>();
        offered(answer).map(Answer.Rung::method).filter(barred::contains).forEach(m -> wrong.add("rung " + m));
        // to wait for the weather is to name what the weather bars
        answer.next().method().filter(m -> !answer.next().action().equals("wait")).filter(barred::contains)
                .ifPresent(m -> wrong.add("next " + answer.next().action() + " " + m));
        return wrong;
    }

    /** Law 2: steps around the rungs that are barred. */
    static List<String> barredButAround(Answer answer, Set<String> barred) {
        List<String> wrong = new ArrayList<>();
        around("before", answer.before(), barred, wrong);
        around("after", answer.after(), barred, wrong);
        offered(answer).forEach(r -> {
            r.bridgeBefore().forEach(b -> b.steps().stream().filter(barred::contains)
                    .forEach(s -> wrong.add("bridge " + s + " before " + r.method())));
            around("if cleared after " + r.method(), r.ifCleared(), barred, wrong);
            around("if marked after " + r.method(), r.ifMarked(), barred, wrong);
        });
        return wrong;
    }

    /** Rungs and alternatives. */
    static Stream<Answer.Rung> offered(Answer answer) {
        return Stream.concat(answer.rungs().stream(), answer.alternatives().stream().map(Answer.Alternative::rung));
    }

    private static void around(String place, List<Answer.Around> steps, Set<String> barred, List<String> wrong) {
        steps.stream().map(Answer.Around::step).filter(barred::contains).forEach(s -> wrong.add(place + ": " + s));
    }

    /** Law 8: what stands without a reason. */
    static List<String> unreasoned(Answer a) {
        List<String> wrong = new ArrayList<>();
        a.assumed().forEach(x -> because("assumed " + x.fact(), x.because(), wrong));
        a.hold().ifPresent(x -> because("hold", x.because(), wrong));
        Stream.concat(a.before().stream(), a.after().stream()).forEach(x -> because("step " + x.step(), x.because(), wrong));
        a.barred().forEach(x -> because("bar of " + x.method(), x.because(), wrong));
        a.passedOver().forEach(x -> because("passed over " + x.method(), x.because(), wrong));
        a.neighbours().forEach(x -> because("neighbour " + x.surface(), x.because(), wrong));
        a.ladder().ifPresent(l -> because("way out", l.wayOut().because(), wrong));
        if (!a.next().action().equals("done")) {
            because("next " + a.next().action(), a.next().because(), wrong);
        }
        Stream.concat(a.rungs().stream(), a.alternatives().stream().map(Answer.Alternative::rung)).forEach(r -> {
            because("rung " + r.method(), r.because(), wrong);
            r.staysWet().ifPresent(x -> because("stays wet of " + r.method(), x.because(), wrong));
            r.risks().forEach(x -> because("risk of " + r.method(), x.because(), wrong));
            r.ppe().forEach(x -> because("ppe " + x.item() + " of " + r.method(), x.because(), wrong));
            r.gates().forEach(x -> because("gate " + x.id() + " of " + r.method(), x.because(), wrong));
            r.bridgeBefore().forEach(x -> because("bridge of " + r.method(), x.because(), wrong));
            r.ifCleared().forEach(x -> because("if cleared of " + r.method(), x.because(), wrong));
            r.ifMarked().forEach(x -> because("if marked of " + r.method(), x.because(), wrong));
        });
        return wrong;
    }

    private static void because(String what, List<Because> reasons, List<String> wrong) {
        if (reasons.isEmpty()) {
            wrong.add(what + " has no because");
        }
        for (Because b : reasons) {
            if (b.says() == null || b.says().isBlank()) {
                wrong.add(what + ": " + b.name() + " says nothing");
            }
            if (b.reason().basis() == null) {
                wrong.add(what + ": " + b.name() + " has no basis");
            } else if (b.reason().basis() == Basis.PUBLISHED && b.allSources().isEmpty()) {
                wrong.add(what + ": " + b.name() + " is called published and names no source");
            }
        }
    }

    static Set<String> barred(Question question) {
        return barred(Base.advisor().answer(question, true));
    }

    static Set<String> barred(Answer all) {
        return all.barred().stream().map(Answer.Barred::method).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Removers that nothing bars. */
    static Set<String> permitted(Question question) {
        Set<String> permitted = Base.advisor().knowledge().methods().values().stream()
                .filter(m -> m.kind() == MethodKind.REMOVE).map(m -> m.id())
                .collect(Collectors.toCollection(TreeSet::new));
        permitted.removeAll(barred(question));
        return permitted;
    }

    static List<String> ids(Answer answer) {
        return answer.rungs().stream().map(Answer.Rung::method).toList();
    }

    /** Whether one list is the other with some left out. */
    static boolean isThinned(List<String> thin, List<String> full) {
        int at = 0;
        for (String one : full) {
            if (at < thin.size() && thin.get(at).equals(one)) {
                at++;
            }
        }
        return at == thin.size();
    }

    /** Law 5: the tail of the old ladder, perhaps thinned; a ladder that is used up is chosen again from what was not tried. */
    static boolean isTail(Answer after, List<String> tail) {
        return isTail(after, tail, Set.of());
    }

    /** The same where others may take a place in it. */
    static boolean isTail(Answer after, List<String> tail, Set<String> others) {
        boolean usedUp = tail.stream().allMatch(after.question()::hasTried);
        return isThinned(ids(after).stream().filter(id -> !others.contains(id)).toList(), tail)
                || usedUp && ids(after).stream().noneMatch(after.question()::hasTried);
    }

    /** Law 4: what grew younger with age. */
    static List<String> younger(Answer.State young, Answer.State old) {
        return old.hardened() < young.hardened() || old.marked() < young.marked()
                ? List.of(young + " then " + old) : List.of();
    }

    /** Law 6: bars that a hotter panel lifted. */
    static List<String> lifted(Set<String> cool, Set<String> hot) {
        return cool.stream().filter(m -> !hot.contains(m)).toList();
    }

    /** Law 9: what agent, tool or deposit demand and a rung does not say. */
    static List<String> unprotected(Answer answer) {
        List<String> wrong = new ArrayList<>();
        var known = Base.advisor().knowledge();
        for (Answer.Rung rung : offered(answer).toList()) {
            var method = known.methods().get(rung.method());
            List<String> demanded = new ArrayList<>(known.agentOf(method).ppe());
            demanded.addAll(known.toolOf(method).ppe());
            demanded.addAll(method.ppe());
            demanded.addAll(known.contaminants().get(answer.question().contaminant().orElseThrow()).ppe());
            demanded.removeAll(rung.ppe().stream().map(Answer.Ppe::item).toList());
            demanded.forEach(d -> wrong.add(rung.method() + " without " + d));
        }
        return wrong;
    }
}
