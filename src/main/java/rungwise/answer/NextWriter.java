package rungwise.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.common.Sentence;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.ladder.Choice;
import rungwise.ladder.Ladder;
import rungwise.ladder.NextStep;
import rungwise.ladder.Surroundings;
import rungwise.rules.said.Action;
import rungwise.rules.said.Because;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Gated;
import rungwise.rules.said.Next;
import rungwise.rules.said.Reason;
import rungwise.text.Figure;
import rungwise.text.Texts;

/** Writes the one thing to do now. */
final class NextWriter {
    private final KnowledgeBase base;
    private final Ladder ladder;
    private final Surroundings around;
    private final StepWriter steps;
    private final RungWriter rungs;
    private final Texts texts;

    NextWriter(Ladder ladder, Surroundings around, StepWriter steps, RungWriter rungs, Texts texts) {
        this.base = ladder.revision().base();
        this.ladder = ladder;
        this.around = around;
        this.steps = steps;
        this.rungs = rungs;
        this.texts = texts;
    }

    Answer.Next of(NextStep next, List<Answer.Rung> written) {
        Next said = next.said().conclusion();
        Optional<Method> method = next.method().map(base.methods()::get);
        List<Answer.Due> due = said.action() == Action.PREPARE ? due(next) : List.of();
        Optional<String> until = until(said.until());
        List<Because> because = new ArrayList<>(List.of(next.said().because()));
        due.forEach(d -> because.addAll(d.because()));
        if (said.action() == Action.WAIT) {
            ladder.verdicts().of(said.method()).bars().forEach(b -> because.add(b.because()));
        }
        Optional<Answer.Rung> rung = written.stream().filter(r -> next.method().filter(r.method()::equals).isPresent()).findFirst();
        String text = texts.say("next." + said.text(), "method", method.map(Method::name).orElse(""),
                "technique", method.map(Method::inOneGo).orElse(""), "until", until.orElse(""),
                "steps", due.stream().map(Answer.Due::text).collect(Collectors.joining(" ")), "wayOut",
                said.action() == Action.REFER ? handOver(next) : wayOutText(next),
                "what", figure(said, "what"), "act", figure(said, "act"), "avoid", figure(said, "avoid"), "doFirst", figure(said, "doFirst"),
                "ask", rung.map(this::questions).orElse(""));
        return new Answer.Next(said.action().word(), next.method(), until, text, due,
                said.action() == Action.FLUSH ? rungs.ppe(said.method()) : List.of(), because.stream().distinct().toList());
    }

    private static String figure(Next said, String name) {
        return said.figures().stream().filter(f -> f.name().equals(name)).map(Figure::value).map(Object::toString).findFirst().orElse("");
    }

    private Optional<String> until(String until) {
        if (until.isEmpty()) {
            return Optional.empty();
        }
        String id = "until." + until.replace(' ', '-');
        return Optional.of(texts.has(id) ? texts.say(id) : until);
    }

    private List<Answer.Due> due(NextStep next) {
        Choice first = ladder.rungs().get(0);
        List<Answer.Due> preparing = steps.gathered(around.preparing(first).stream().map(steps::step).toList()).stream()
                .map(s -> new Answer.Due(s.step(), s.text(), minutes(s.step()), s.because())).toList();
        FirstThings things = new FirstThings(base);
        next.gates().stream().filter(g -> gate(g).first()).forEach(g -> things.keepPeopleSafe(due(g)));
        if (!next.bridges().isEmpty()) {
            rungs.due(first).forEach(things::rinseBetween);
        }
        next.gates().stream().filter(g -> !gate(g).first()).forEach(g -> things.meet(gate(g), due(g)));
        things.prepare(preparing);
        return things.inOrder();
    }

    private Gate gate(Concluded<Gated> gated) {
        return base.gates().get(gated.conclusion().gate());
    }

    private Answer.Due due(Concluded<Gated> gated) {
        return new Answer.Due(gate(gated).id(), gate(gated).obtain(), 0, List.of(gated.because()));
    }

    private double minutes(String step) {
        return Figures.thousandths(Optional.ofNullable(base.methods().get(step)).map(rungs::minutes).orElse(0.0));
    }

    /** What nobody told yet and could change the step, in one line. */
    private String questions(Answer.Rung rung) {
        List<String> asked = rung.gates().stream().filter(g -> g.state().equals(Answer.GateState.MISSING))
                .filter(g -> base.gates().get(g.id()).asks()).map(Answer.GateState::name).map(Sentence::within).toList();
        return asked.isEmpty() ? "" : texts.say("next.ask", "questions", String.join("; ", asked)) + " ";
    }

    Answer.WayOut wayOut(NextStep next) {
        List<Because> because = new ArrayList<>(List.of(Because.of(Reason.surface(ladder.situation().asked()), List.of())));
        next.leavable().ifPresent(l -> because.add(l.because()));
        return new Answer.WayOut(next.wayOut().id(), wayOutText(next), because);
    }

    /** Leaving it comes first where that harms nobody. */
    private String wayOutText(NextStep next) {
        return next.leavable().isPresent() && next.wayOut().kind() != MethodKind.WAIT
                ? texts.say("wayOut.leave-or-hand-over", "method", next.wayOut().name()) : handOver(next);
    }

    private String handOver(NextStep next) {
        return next.wayOut().kind() == MethodKind.WAIT ? texts.say("wayOut.leave") : texts.say("wayOut.hand-over", "method", next.wayOut().name());
    }
}
