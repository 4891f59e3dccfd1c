package rungwise.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Dwell;
import rungwise.knowledge.method.Gate;
import rungwise.knowledge.method.Method;
import rungwise.ladder.Choice;
import rungwise.ladder.Ladder;
import rungwise.ladder.Surroundings;
import rungwise.question.Question;
import rungwise.rules.fact.Attempt;
import rungwise.rules.said.Because;
import rungwise.rules.said.Caution;
import rungwise.rules.said.Clash;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Gated;
import rungwise.rules.said.Protect;
import rungwise.rules.use.Use;
import rungwise.science.ChanceRange;
import rungwise.text.Texts;
import rungwise.workup.Extents;
import rungwise.workup.Mixing;
import rungwise.workup.Rinse;
import rungwise.workup.Rinses;
import rungwise.workup.Wetness;

/** Writes a chosen method out as a rung: everything the person at the panel needs, each thing with its because. */
final class RungWriter {
    private static final String BETWEEN = "between";

    private final KnowledgeBase base;
    private final Ladder ladder;
    private final Surroundings around;
    private final StepWriter steps;
    private final Wetness wetness;
    private final Rinses rinses;
    private final Question question;

    RungWriter(Ladder ladder, Surroundings around, StepWriter steps, Rinses rinses) {
        this.base = ladder.revision().base();
        this.ladder = ladder;
        this.around = around;
        this.steps = steps;
        this.rinses = rinses;
        this.question = ladder.situation().question();
        this.wetness = new Wetness(base, ladder.revision().worked().volatiles(), question, ladder.situation().panel());
    }

    Wetness wetness() {
        return wetness;
    }

    /** The rungs, each with what must happen between it and everything before it; what may not meet in a visit parts visits. */
    List<Answer.Rung> rungs() {
        List<Answer.Rung> rungs = new ArrayList<>();
        List<Agent> earlier = new ArrayList<>(around.tried());
        List<Agent> inVisit = new ArrayList<>(earlier);
        int visit = 1;
        List<Choice> choices = ladder.rungs();
        for (int i = 0; i < choices.size(); i++) {
            Choice choice = choices.get(i);
            if (inVisit.stream().anyMatch(a -> around.clashes(a, choice).stream().anyMatch(c -> c.conclusion().visit()))) {
                visit++;
                inVisit.clear();
            }
            rungs.add(rung(i + 1, visit, choice, earlier, i + 1 < choices.size() ? Optional.of(choices.get(i + 1)) : Optional.empty()));
            earlier.add(choice.use().agent());
            inVisit.add(choice.use().agent());
        }
        return rungs;
    }

    Answer.Rung alone(Choice choice) {
        return rung(1, 1, choice, around.tried(), Optional.empty());
    }

    private Answer.Rung rung(int rank, int visit, Choice choice, List<Agent> earlier, Optional<Choice> next) {
        Method method = choice.method();
        double mean = ladder.mean(choice);
        double half = ChanceRange.halfWidth(mean, base.decisions().value(DecisionId.LEARNT_HERE) + ladder.triesBehind(choice));
        Dwell dwell = Wetness.dwell(method, choice.verdict().narrows());
        return new Answer.Rung(rank, visit, method.id(), method.name(),
                new Answer.Grades(choice.severity().mechanical(), choice.severity().chemical(),
                        choice.severity().thermal(), choice.severity().filmMicrons(), choice.carried().fields()),
                new ChanceWords(base.decisions()).odds(mean, half, basis(choice), ladder.count(choice)),
                Figures.thousandths(minutes(method)), agent(choice.use()), new Answer.Span(dwell.from(), dwell.to()),
                wetness.of(choice.use(), dwell), method.window().map(w -> new Answer.Span(w.from(), w.to())), method.pressureBar(),
                choice.use().tool().name(), method.inOneGo(), method.technique(), tries(method), method.level(), method.stopSigns(),
                risks(choice), ppe(choice.id()), gates(choice), method.waste(), bridges(choice, earlier),
                ifCleared(method), ifMarked(method), reasons(choice, next));
    }

    private String basis(Choice choice) {
        boolean learned = choice.likely().stream().anyMatch(l -> l.learned());
        boolean computed = ladder.revision().computed().isComputed(ladder.situation().question().contaminant()
                .orElse(ladder.belief().keySet().iterator().next()), choice.id());
        return learned ? "learned" : computed ? "computed" : "prior";
    }

    /** Minutes for the whole extent, dwell included once: it runs on all spots at the same time. */
    double minutes(Method method) {
        double work = Extents.of(base.assumptions()).soonest(method, question.extent()) * ladder.pace(method);
        return work + method.dwell().usual();
    }

    private Optional<Answer.Brought> agent(Use use) {
        Agent agent = use.agent();
        return agent == Agent.NONE ? Optional.empty() : Optional.of(new Answer.Brought(agent.id(), agent.name(),
                agent.dilution(), Mixing.text(use, question.mixing())));
    }

    private Answer.Tries tries(Method method) {
        double visit = base.decisions().value(DecisionId.A_VISIT);
        List<Attempt> today = ladder.situation().attempts().stream().filter(a -> a.hoursAgo() < visit).toList();
        int done = today.stream().filter(a -> a.method().equals(method.id())).mapToInt(Attempt::times).sum();
        double contact = today.stream().filter(a -> a.family().equals(method.family())).mapToDouble(Attempt::contactMinutes).sum();
        return new Answer.Tries(done, method.tries(),
                base.families().get(method.family()).contactCapMinutes().map(cap -> Math.max(0, cap - contact)));
    }

    /** What to mind, people before the vehicle: what an agent, a tool or a method is known for harms people. */
    private List<Answer.Risk> risks(Choice choice) {
        Map<String, Answer.Risk> risks = new LinkedHashMap<>();
        for (Concluded<Caution> caution : join(choice.verdict().cautions(), ladder.verdicts().general().cautions())) {
            risks.merge(caution.conclusion().text(), new Answer.Risk(caution.conclusion().text(), caution.conclusion().guardsPeople(),
                    List.of(caution.because())), Answer.Risk::also);
        }
        List<Because> stated = List.of(StepWriter.entry(choice.method()));
        Stream.of(choice.use().agent().risks(), choice.use().tool().risks(), choice.method().risks()).flatMap(List::stream)
                .forEach(text -> risks.putIfAbsent(text, new Answer.Risk(text, true, stated)));
        return risks.values().stream().sorted(Comparator.comparing(r -> !r.toPeople())).toList();
    }

    /** What a method asks for here, whether it is a rung or first aid. */
    List<Answer.Ppe> ppe(String method) {
        Map<String, List<Concluded<Protect>>> items = new TreeMap<>();
        for (Concluded<Protect> protect : join(ladder.verdicts().of(method).protects(), ladder.verdicts().general().protects())) {
            protect.conclusion().items().forEach(i -> items.computeIfAbsent(i, n -> new ArrayList<>()).add(protect));
        }
        return items.entrySet().stream().map(e -> new Answer.Ppe(e.getKey(), where(e.getValue()),
                e.getValue().stream().map(Concluded::because).toList())).toList();
    }

    private static Optional<String> where(List<Concluded<Protect>> demands) {
        List<String> places = demands.stream().map(d -> d.conclusion().where()).distinct().toList();
        return places.contains("") ? Optional.empty() : Optional.of(String.join(Texts.said("list.or"), places));
    }

    private List<Answer.GateState> gates(Choice choice) {
        Map<String, List<Because>> byGate = new TreeMap<>();
        for (Concluded<Gated> gate : choice.verdict().gates()) {
            List<Because> reasons = byGate.computeIfAbsent(gate.conclusion().gate(), g -> new ArrayList<>());
            if (reasons.stream().noneMatch(b -> b.id().equals(gate.because().id()))) {
                reasons.add(gate.because());
            }
        }
        return byGate.entrySet().stream().map(e -> gate(base.gates().get(e.getKey()), choice.method(), e.getValue())).toList();
    }

    private Answer.GateState gate(Gate gate, Method method, List<Because> because) {
        String state = question.consent().refused().contains(gate.id()) ? Answer.GateState.REFUSED
                : ladder.verdicts().gates().isOpen(gate, method) ? Answer.GateState.MET : Answer.GateState.MISSING;
        return new Answer.GateState(gate.id(), gate.name(), state, gate.obtain(), because);
    }

    private List<Answer.Bridge> bridges(Choice choice, List<Agent> earlier) {
        Map<String, Answer.Bridge> bridges = new LinkedHashMap<>();
        for (Agent before : earlier) {
            around.clashes(before, choice).forEach(clash -> bridges.put(before.id() + ">" + clash.conclusion().then(),
                    bridge(before, clash)));
        }
        return List.copyOf(bridges.values());
    }

    private Answer.Bridge bridge(Agent before, Concluded<Clash> clash) {
        Clash said = clash.conclusion();
        Optional<Rinse> rinse = rinses.after(before);
        List<String> steps = said.bridge().stream().filter(around::isPermitted).toList();
        double rinsing = rinse.map(Rinse::minutes).orElseGet(() -> steps.stream().map(base.methods()::get)
                .mapToDouble(base::minutesPerSpot).min().orElse(0));
        return new Answer.Bridge(before.id(), steps, said.waitMinutes(), rinsing + said.waitMinutes(), said.text(), rinse,
                List.of(clash.because()));
    }

    /** What is due before the first rung because of what was brought to the spot in this visit. */
    List<Answer.Due> due(Choice first) {
        return bridges(first, around.tried()).stream().map(b -> new Answer.Due(BETWEEN, b.text(), b.minutes(), b.because())).toList();
    }

    private List<Answer.Around> ifCleared(Method method) {
        return steps.gathered(method.afterwards().stream().map(base.methods()::get)
                .map(m -> steps.plain(m, List.of(StepWriter.entry(method)))).toList());
    }

    private List<Answer.Around> ifMarked(Method method) {
        List<Answer.Around> corrections = new ArrayList<>();
        around.corrections(method).forEach(m -> corrections.add(steps.plain(m, List.of(StepWriter.entry(method)))));
        around.markCorrections().forEach((correction, from) -> {
            if (!around.corrections(method).contains(correction)) {
                corrections.add(steps.plain(correction, List.of(StepWriter.entry(from))));
            }
        });
        if (corrections.isEmpty() && around.isPermitted(StepWriter.LEAVE)) {
            corrections.add(steps.leaveTheMark(List.of(StepWriter.entry(method))));
        }
        return corrections;
    }

    private List<Because> reasons(Choice choice, Optional<Choice> next) {
        List<Because> reasons = new ArrayList<>(new PositiveReasons(ladder, base).of(choice, next));
        choice.verdict().moves().forEach(m -> reasons.add(m.because()));
        reasons.addAll(choice.orderReasons());
        return reasons;
    }

    private static <T> List<T> join(List<T> one, List<T> two) {
        List<T> all = new ArrayList<>(one);
        all.addAll(two);
        return all;
    }
}
