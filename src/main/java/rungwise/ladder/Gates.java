package rungwise.ladder;

import java.util.Map;
import java.util.function.Predicate;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.method.Method;
import rungwise.question.Question;

/** Which gates a question has opened. What opens a gate is knowledge; here it is only held against the question. */
public final class Gates {
    private static final Map<String, Predicate<Question>> GIVEN = Map.of(
            "totalFilmMicrons", q -> q.facts().totalFilmMicrons().isPresent(),
            "clearMicrons", q -> q.facts().clearMicrons().isPresent(),
            "paintAgeDays", q -> q.facts().paintAgeDays().isPresent(),
            "refinished", q -> q.facts().refinished().isPresent(),
            "panelC", q -> q.setting().panelC().isPresent(),
            "sun", q -> q.setting().sun().isPresent(),
            "bay", q -> q.setting().outdoors() || q.setting().indoors().isPresent());

    private final Question question;

    Gates(Question question) {
        this.question = question;
    }

    public boolean isOpen(Gate gate, Method by) {
        Gate.Opens opens = gate.opens();
        String method = by.id();
        return isGranted(gate, method)
                || !gate.asks() && question.done().contains(gate.id())
                || opens.facts().stream().anyMatch(f -> GIVEN.get(f).test(question))
                || opens.done().filter(question.done()::contains).isPresent()
                || opens.testPassed() && question.passedTests().contains(method)
                || opens.airChangesPerHour().filter(this::airMoves).isPresent()
                || opens.level().filter(this::isOnTheJob).isPresent()
                || opens.withinWindow() && isWithinWindow(by);
    }

    /** An agreement to the gate, or to the method with all that it needs. Nobody can agree to a fact or to work. */
    public boolean isGranted(Gate gate, String method) {
        return gate.needsAgreement() && (question.consent().granted().contains(gate.id())
                || question.consent().granted().contains(method));
    }

    /** Whether it is the worker's to do now: no test spot, no question, nor what only an unknown bay leaves open. */
    public boolean isWork(Gate gate) {
        boolean unknownBay = gate.opens().airChangesPerHour().isPresent() && !GIVEN.get("bay").test(question);
        return !gate.asks() && !gate.opens().testPassed() && !unknownBay;
    }

    private boolean isWithinWindow(Method method) {
        return question.setting().panelC().isPresent() && method.window()
                .map(w -> question.setting().panelC().getAsDouble() <= w.to()).orElse(true);
    }

    private boolean airMoves(double airChangesPerHour) {
        return question.setting().outdoors() || question.setting().indoors()
                .filter(i -> i.airChangesPerHour() >= airChangesPerHour).isPresent();
    }

    private boolean isOnTheJob(String level) {
        return question.workers().stream().anyMatch(w -> w.level().compareTo(level) >= 0);
    }
}
