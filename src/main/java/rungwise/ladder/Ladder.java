package rungwise.ladder;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwise.knowledge.Figures;
import rungwise.knowledge.Mechanism;
import rungwise.knowledge.Method;
import rungwise.question.Question;
import rungwise.science.Belief;

/**
 * The chosen rungs after everything that was tried: the ladder as it stood before the first try, less what was climbed.
 *
 * @param rungs        still worth trying, in order
 * @param passed       permitted but not worth it
 * @param belief       after the tries
 * @param failed       rungs that changed nothing
 * @param partly       the rung that helped partly and may be repeated, if any
 */
record Ladder(List<Choice> rungs, List<Choice> slow, List<Passed> passed, Belief belief, Set<String> failed,
              Set<String> partly, boolean cleared) {

    static Ladder climb(Question question, Scene scene, Candidacy candidacy, List<Choice> ordered, Worth worth,
                        Sequence sequence) {
        Worth.Chosen chosen = worth.choose(ordered, scene.belief(), question.canWaitMinutes());
        List<Choice> rungs = new ArrayList<>(chosen.rungs());
        Map<String, Passed> passed = new LinkedHashMap<>();
        chosen.passed().forEach(p -> passed.put(p.choice().id(), p));
        Map<String, Choice> byId = new LinkedHashMap<>();
        ordered.forEach(c -> byId.put(c.id(), c));
        Belief belief = scene.belief();
        Set<String> failed = new HashSet<>();
        Set<String> partly = new HashSet<>();
        boolean cleared = false;
        for (Question.Tried tried : question.tried()) {
            if (!tried.counts() || tried.method().isEmpty()) {
                continue;
            }
            String id = tried.method().get();
            Choice choice = byId.get(id);
            boolean isRung = rungs.stream().anyMatch(r -> r.id().equals(id));
            switch (tried.outcome()) {
                case "no-change" -> {
                    Likely likely = choice == null ? Likely.prior(candidacy.chancesOf(id)) : choice.likely();
                    for (int i = 0; i < tried.times(); i++) {
                        belief = belief.afterFailure(likely.ifFresh(), likely.ifHardened());
                    }
                    if (isRung) {
                        failed.add(id);
                        cut(rungs, id, true, owed(rungs, id, question, sequence));
                    }
                    partly.remove(id);
                }
                case "partly" -> {
                    if (isRung) {
                        cut(rungs, id, false, Set.of());
                        partly.add(id);
                    }
                }
                case "cleared" -> cleared = true;
                default -> {
                }
            }
        }
        Belief now = belief;
        if (cleared) {
            rungs.clear();
        }
        rungs.removeIf(r -> {
            if (!candidacy.isPermitted(r.id())) {
                return true;
            }
            if (r.mean(now) < Worth.POINTLESS_BELOW) {
                passed.put(r.id(), new Passed(r, "pointless", "chance " + Figures.text(r.mean(now))
                        + " after what was tried, under " + Figures.text(Worth.POINTLESS_BELOW)));
                return true;
            }
            return false;
        });
        List<Choice> slow = (cleared ? List.<Passed>of() : passed.values()).stream().filter(p -> p.step().equals("slow"))
                .map(Passed::choice).filter(c -> candidacy.isPermitted(c.id()))
                .filter(c -> !question.hasTried(c.id()))
                .filter(c -> c.mean(now) >= Worth.POINTLESS_BELOW).toList();
        return new Ladder(List.copyOf(rungs), slow, passed.values().stream()
                .filter(p -> candidacy.isPermitted(p.choice().id())).toList(), now, failed, partly, cleared);
    }

    int failedRungs() {
        return failed.size();
    }

    /**
     * What should have come before a rung that only shears and was left out: it dissolves what clay, blade or pick would
     * drag. That they lifted nothing says nothing of it.
     */
    private static Set<String> owed(List<Choice> rungs, String failed, Question question, Sequence sequence) {
        Set<String> owed = new HashSet<>();
        rungs.stream().filter(r -> r.id().equals(failed)).findFirst().ifPresent(sheared -> rungs.stream()
                .filter(r -> isOwed(r.method(), sheared.method(), question, sequence)).forEach(r -> owed.add(r.id())));
        return owed;
    }

    /** Whether a method should have come before one that only shears and that failed. */
    static boolean isOwed(Method method, Method failed, Question question, Sequence sequence) {
        return failed.mechanism() == Mechanism.SHEAR && method.mechanism() != Mechanism.SHEAR
                && sequence.earlierThan(failed.id()).containsKey(method.id()) && !question.hasTried(method.id());
    }

    /** Drops everything up to a rung; gentler ones do not come back after a harsher one failed, but for what is owed. */
    private static void cut(List<Choice> rungs, String id, boolean itself, Set<String> owed) {
        int at = 0;
        while (!rungs.get(at).id().equals(id)) {
            at++;
        }
        rungs.subList(0, itself ? at + 1 : at).removeIf(r -> !owed.contains(r.id()));
    }
}
