package rungwise.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.Base;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Basis;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.knowledge.MethodKind;
import rungwise.knowledge.Reactive;
import rungwise.ladder.Answer;
import rungwise.ladder.Question;
import rungwise.rules.Because;

/** What a law finds wrong with an answer; nothing where it holds. */
final class Checks {
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
        Set<String> barred = with.barred().stream().map(Answer.Barred::method).collect(Collectors.toSet());
        return without.rungs().stream().filter(r -> barred.contains(r.method()))
                .filter(r -> r.gates().stream().noneMatch(g -> g.id().equals(gate))).map(Answer.Rung::method).toList();
    }

    /** Law 13: rungs that take more than the budget, their refining counted. */
    static List<String> overBudget(Answer answer, double budgetMicrons) {
        return answer.rungs().stream().filter(r -> taken(r.method()) > budgetMicrons).map(Answer.Rung::method).toList();
    }

    /** Film that a method takes with its obligatory refining, µm. */
    static double taken(String id) {
        KnowledgeBase base = Base.advisor().knowledge();
        Method method = base.methods().get(id);
        return method.severity().filmMicrons() + (method.removesFilm() ? method.correction().stream().map(base.methods()::get)
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

    private static Stream<Answer.Rung> offered(Answer answer) {
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
        because("way out", a.wayOut().because(), wrong);
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
                wrong.add(what + ": " + b.rule() + " says nothing");
            }
            if (b.basis() == null) {
                wrong.add(what + ": " + b.rule() + " has no basis");
            } else if (b.basis() == Basis.PUBLISHED && b.sources().isEmpty()) {
                wrong.add(what + ": " + b.rule() + " is called published and names no source");
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
        for (Answer.Rung rung : answer.rungs()) {
            var method = known.methods().get(rung.method());
            List<String> demanded = new ArrayList<>(known.agentOf(method).ppe());
            demanded.addAll(known.toolOf(method).ppe());
            demanded.addAll(known.contaminants().get(answer.question().contaminant().orElseThrow()).ppe());
            demanded.removeAll(rung.ppe().stream().map(Answer.Ppe::item).toList());
            demanded.forEach(d -> wrong.add(rung.method() + " without " + d));
        }
        return wrong;
    }
}
