package rungwise.answer;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.ladder.Asked;
import rungwise.ladder.Choice;
import rungwise.ladder.Ladder;
import rungwise.ladder.Surroundings;
import rungwise.rules.said.Because;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Reason;
import rungwise.rules.said.Step;
import rungwise.text.Texts;
import rungwise.workup.Rinses;

/** Writes steps around the rungs. */
final class StepWriter {
    /** The step after the last rung that takes all chemistry off. */
    private static final String RINSES_OFF = "neutral_rewash";
    static final String LEAVE = "leave_monitor";

    private final KnowledgeBase base;
    private final Ladder ladder;
    private final Surroundings around;
    private final Rinses rinses;
    private final Texts texts;

    StepWriter(Ladder ladder, Surroundings around, Rinses rinses, Texts texts) {
        this.base = ladder.revision().base();
        this.ladder = ladder;
        this.around = around;
        this.rinses = rinses;
        this.texts = texts;
    }

    /** All steps of a place. */
    List<Answer.Around> of(String place) {
        return gathered(around.steps(place).stream().map(this::step).toList());
    }

    Answer.Around step(Asked asked) {
        Step step = asked.step();
        Optional<Method> method = Optional.ofNullable(base.methods().get(step.name()));
        String dilution = step.dilution().isEmpty() ? method.map(base::agentOf).map(Agent::dilution).orElse("") : step.dilution();
        List<String> wear = method.stream().flatMap(m -> Stream.of(base.agentOf(m).ppe(), base.toolOf(m).ppe(), m.ppe()))
                .flatMap(List::stream).distinct().toList();
        return new Answer.Around(step.name(), step.text(), step.rungs(), Optional.of(dilution).filter(d -> !d.isEmpty()), step.onDry(),
                Optional.of(step.watch()).filter(w -> !w.isEmpty()), step.name().equals(RINSES_OFF)
                ? rinses.after(ladder.rungs().stream().map(Choice::use).map(u -> u.agent()).toList()) : Optional.empty(), wear,
                asked.because());
    }

    Answer.Around plain(Method method, List<Because> because) {
        return new Answer.Around(method.id(), method.inOneGo(), because);
    }

    Answer.Around leaveTheMark(List<Because> because) {
        return new Answer.Around(LEAVE, texts.say("mark.leave"), because);
    }

    /** The knowledge entry itself as a reason. */
    static Because entry(Method method) {
        return Because.of(Reason.method(method), List.of());
    }

    static Because entry(Contaminant contaminant) {
        return Because.of(Reason.contaminant(contaminant), List.of());
    }

    /** The steps that may be named today, those that wait gathered under what they wait for. */
    List<Answer.Around> gathered(List<Answer.Around> steps) {
        Map<String, Answer.Around> named = new LinkedHashMap<>();
        for (Answer.Around step : steps) {
            if (around.isPermitted(step.step())) {
                named.putIfAbsent(step.step(), step);
            } else {
                around.waitsFor(step.step()).map(opens -> waiting(step, opens)).ifPresent(w -> named.merge(w.step(), w, this::both));
            }
        }
        return List.copyOf(named.values());
    }

    private Answer.Around waiting(Answer.Around step, String opens) {
        List<Because> because = Stream.concat(around.barsOf(step.step()).stream().map(Concluded::because), step.because().stream()).toList();
        return new Answer.Around(opens, texts.say("step.once", "until", texts.say("until." + opens.replace(' ', '-')), "step", step.text()),
                step.forRungs(), step.dilution(), step.onDry(), step.watch(), step.rinse(), step.wear(), because);
    }

    private Answer.Around both(Answer.Around one, Answer.Around other) {
        return one.saying(one.text().endsWith(other.text()) ? one.text() : one.text() + " " + other.text(),
                one.rinse().or(other::rinse), Stream.concat(one.because().stream(), other.because().stream()).distinct().toList());
    }
}
