package rungwise.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.MethodKind;
import rungwise.knowledge.Sentence;
import rungwise.knowledge.ToolKind;
import rungwise.knowledge.Trait;
import rungwise.question.Question;
import rungwise.rules.Bar;
import rungwise.rules.Because;
import rungwise.rules.Concluded;
import rungwise.rules.FlushFirst;
import rungwise.rules.Halt;
import rungwise.rules.Reason;

/** Turns a ladder into the one thing to do now. */
final class NextStep {
    private static final Set<String> NOT_PREPARATION = Set.of("photograph");

    private final KnowledgeBase base;
    private final Question question;
    private final Scene scene;
    private final Candidacy candidacy;
    private final Ladder ladder;
    private final Assembly assembly;

    NextStep(KnowledgeBase base, Question question, Scene scene, Candidacy candidacy, Ladder ladder, Assembly assembly) {
        this.base = base;
        this.question = question;
        this.scene = scene;
        this.candidacy = candidacy;
        this.ladder = ladder;
        this.assembly = assembly;
    }

    /**
     * The one thing to do now.
     *
     * @param before what the first rung or the whole job asks for
     */
    Answer.Next of(Optional<Answer.Held> hold, List<Answer.Around> before, List<Answer.Rung> rungs,
                   List<Answer.Alternative> alternatives, Answer.WayOut wayOut) {
        if (hold.isPresent()) {
            return next("hold", null, hold.get().until(), hold.get().doFirst(), hold.get().because());
        }
        List<Concluded<FlushFirst>> flush = scene.derived().of(FlushFirst.class);
        if (!flush.isEmpty() && question.tried().stream().noneMatch(t -> t.outcome().equals("cleared"))) {
            FlushFirst first = flush.get(0).conclusion();
            return new Answer.Next("flush", Optional.of(first.method()), Optional.empty(), first.why(),
                    assembly.ppe(first.method()), List.of(flush.get(0).because()));
        }
        List<Concluded<Halt>> halt = scene.derived().of(Halt.class);
        if (!halt.isEmpty()) {
            return next("stop", null, null, halt.get(0).conclusion().text(), List.of(halt.get(0).because()));
        }
        if (ladder.cleared()) {
            return next("done", null, null, "It is off: run the steps after, then inspect.", List.of());
        }
        Optional<Answer.Next> weather = weather(rungs);
        if (weather.isPresent()) {
            return weather.get();
        }
        if (rungs.isEmpty()) {
            return withoutRungs(alternatives, wayOut);
        }
        return toward(rungs.get(0), before);
    }

    /** A gentler method that only the weather bars is worth waiting for. */
    private Optional<Answer.Next> weather(List<Answer.Rung> rungs) {
        Optional<Choice> waiting = candidacy.all().keySet().stream().filter(candidacy::waitsForWeather)
                .filter(id -> !question.hasTried(id))
                .map(candidacy::choice).filter(c -> c.mean(ladder.belief()) >= Worth.REAL_FROM && !c.takesFilm()
                        && !c.isSlow())
                .min(java.util.Comparator.comparing(Choice::own));
        if (waiting.isEmpty()) {
            return Optional.empty();
        }
        boolean gentlerRung = !rungs.isEmpty() && rungs.get(0).chance().mean() >= Worth.REAL_FROM
                && ladder.rungs().get(0).own().compareTo(waiting.get().own()) < 0;
        if (gentlerRung) {
            return Optional.empty();
        }
        List<Concluded<Bar>> bars = candidacy.judged(waiting.get().id()).bars();
        String until = bars.stream().map(b -> b.conclusion().opensWith()).distinct().sorted()
                .map(NextStep::untilWords).collect(Collectors.joining(" and "));
        return Optional.of(next("wait", waiting.get().id(), until, "Wait until the panel is " + until + ", then "
                + waiting.get().method().name() + ".", bars.stream().map(Concluded::because).toList()));
    }

    static String untilWords(String opensWith) {
        return switch (opensWith) {
            case "shade" -> "in the shade";
            case "cool" -> "cool";
            case "cool and shade" -> "cool and in the shade";
            case "shade and warm" -> "in the shade and warm enough";
            default -> "warm enough";
        };
    }

    private Answer.Next withoutRungs(List<Answer.Alternative> alternatives, Answer.WayOut wayOut) {
        if (!alternatives.isEmpty()) {
            return slow(alternatives.get(0));
        }
        if (scene.surface().is(Trait.CURING)) {
            return next("wait", null, "the painter has released the paint", "Wash with water only, leave the rest, "
                    + "book a return after the painter's release.", wayOut.because());
        }
        if (ladder.failedRungs() >= 2) {
            return reassess(wayOut);
        }
        if (scene.contaminant().isDamage()) {
            return next("leave", "leave_monitor", null, "Leave it, photograph it, tell the customer; "
                    + wayOut.text(), wayOut.because());
        }
        return over(wayOut);
    }

    static Answer.Next slow(Answer.Alternative slow) {
        return next("try", slow.method(), null, slow.name() + ": slow, but nothing quicker is left.", slow.rung().because());
    }

    static Answer.Next reassess(Answer.WayOut wayOut) {
        return next("reassess", null, null, "Nothing moved it: ask again what it is.", wayOut.because());
    }

    static Answer.Next reassess(Answer.Rung abrasive) {
        return next("reassess", abrasive.method(), null, "Two grades changed nothing. Ask again what it is before "
                + "anything abrasive; if it still is, " + abrasive.name() + " is next.", abrasive.because());
    }

    static Answer.Next over(Answer.WayOut wayOut) {
        return next(wayOut.method().startsWith("refer") ? "refer" : "leave", wayOut.method(), null, wayOut.text(),
                wayOut.because());
    }

    private Answer.Next toward(Answer.Rung rung, List<Answer.Around> before) {
        ToolKind tool = ladder.rungs().get(0).use().tool().kind();
        if (ladder.failedRungs() >= 2 && (tool.abrades() || tool == ToolKind.CLAY)) {
            return reassess(rung);
        }
        List<String> todo = new ArrayList<>();
        List<Because> reasons = new ArrayList<>();
        for (Answer.Around step : before) {
            if (!NOT_PREPARATION.contains(step.step())) {
                todo.add(step.text());
                reasons.addAll(step.because());
            }
        }
        for (Answer.GateState gate : rung.gates()) {
            if (gate.state().equals("open") && candidacy.gates().isWork(base.gates().get(gate.id()))) {
                todo.add(gate.obtain());
                reasons.addAll(gate.because());
            }
        }
        String ask = questions(rung);
        if (!todo.isEmpty()) {
            return next("prepare", rung.method(), null, ask + String.join(" ", todo) + " Then: " + rung.name() + ".",
                    reasons);
        }
        if (rung.hasOpen("test_spot")) {
            return next("test", rung.method(), null, ask + "Hidden test spot first: " + rung.name() + ".", rung.because());
        }
        if (ladder.partly().contains(rung.method())) {
            return next("repeat", rung.method(), null, ask + "It helped: once more. " + rung.technique(), rung.because());
        }
        return next("try", rung.method(), null, ask + rung.name() + ". " + rung.technique(), rung.because());
    }

    /** What nobody told yet and could change the step, in one line. */
    private String questions(Answer.Rung rung) {
        List<String> asked = rung.gates().stream().filter(g -> g.state().equals("open"))
                .filter(g -> base.gates().get(g.id()).asks()).map(Answer.GateState::name)
                .map(Sentence::within).toList();
        return asked.isEmpty() ? "" : "Find out first: " + String.join("; ", asked) + "? ";
    }

    private static Answer.Next next(String action, String method, String until, String text, List<Because> because) {
        return new Answer.Next(action, Optional.ofNullable(method), Optional.ofNullable(until), text,
                because.stream().distinct().toList());
    }

    /** Who takes over. */
    Answer.WayOut wayOut(List<Answer.Rung> rungs) {
        String method = scene.surface().is(Trait.CURING) ? "leave_monitor"
                : scene.contaminant().refersTo().orElse(scene.asked().wayOut());
        var entry = base.methods().get(method);
        String text = entry.kind() == MethodKind.WAIT
                ? "Leave it, photograph it, look again later." : entry.name() + ".";
        return new Answer.WayOut(method, text, List.of(Because.of(Reason.surface(scene.asked()), scene.asked().name())));
    }
}
