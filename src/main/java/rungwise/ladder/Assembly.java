package rungwise.ladder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Dwell;
import rungwise.knowledge.Figures;
import rungwise.knowledge.Gate;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.question.Question;
import rungwise.rules.Attempt;
import rungwise.rules.Because;
import rungwise.rules.Caution;
import rungwise.rules.Clash;
import rungwise.rules.Concluded;
import rungwise.rules.Gated;
import rungwise.rules.Protect;
import rungwise.rules.Reason;
import rungwise.rules.Use;
import rungwise.science.Belief;
import rungwise.science.ChanceRange;
import rungwise.workup.ComputedChances;
import rungwise.workup.Mixing;
import rungwise.workup.Rinses;
import rungwise.workup.Wetness;

/** Writes a chosen method out as a rung: everything the person at the panel needs, each thing with its because. */
final class Assembly {
    private final KnowledgeBase base;
    private final Surroundings around;
    private final ComputedChances computed;
    private final Wetness wetness;
    private final Rinses rinses;
    private final Sequence sequence;
    private final Question question;
    private final Scene scene;
    private final Candidacy candidacy;

    Assembly(KnowledgeBase base, ComputedChances computed, Wetness wetness, Rinses rinses, Surroundings around, Sequence sequence, Question question,
             Scene scene, Candidacy candidacy) {
        this.base = base;
        this.computed = computed;
        this.wetness = wetness;
        this.rinses = rinses;
        this.around = around;
        this.sequence = sequence;
        this.question = question;
        this.scene = scene;
        this.candidacy = candidacy;
    }

    /** Every method that may be named beside these rungs: what follows each, what corrects it, what bridges it. */
    static Set<String> namedBeside(List<Choice> choices, Scene scene, Sequence sequence) {
        Set<String> named = new TreeSet<>();
        List<Agent> earlier = new ArrayList<>(earlier(scene));
        for (Choice choice : choices) {
            named.addAll(choice.method().afterwards());
            named.addAll(choice.method().correction());
            for (Agent before : earlier) {
                sequence.clashes(before, choice.use()).forEach(c -> named.addAll(c.conclusion().bridge()));
            }
            earlier.add(choice.use().agent());
        }
        return named;
    }

    private static List<Agent> earlier(Scene scene) {
        return scene.attempts().stream().filter(a -> a.hoursAgo() < 24).map(Attempt::agent).toList();
    }

    List<Answer.Rung> rungs(List<Choice> choices, Belief belief) {
        List<Answer.Rung> rungs = new ArrayList<>();
        List<Agent> earlier = new ArrayList<>(earlier(scene));
        for (Choice choice : choices) {
            rungs.add(rung(rungs.size() + 1, choice, belief, earlier));
            earlier.add(choice.use().agent());
        }
        return rungs;
    }

    Answer.Rung rung(int rank, Choice choice, Belief belief, List<Agent> earlier) {
        Method method = choice.method();
        double mean = choice.mean(belief);
        double half = ChanceRange.halfWidth(mean, belief.mean(choice.likely().triesFresh(),
                choice.likely().triesHardened()));
        Dwell dwell = Wetness.dwell(method, choice.judged().narrows());
        return new Answer.Rung(rank, method.id(), method.name(),
                new Answer.Grades(choice.severity().mechanical(), choice.severity().chemical(),
                        choice.severity().thermal(), choice.severity().filmMicrons(), choice.carried().fields()),
                new Answer.Odds(Figures.thousandths(mean), Figures.thousandths(Math.max(0, mean - half)), Figures.thousandths(Math.min(1, mean + half)),
                        choice.likely().basis(computed.isComputed(scene.contaminant().id(), method.id()))),
                Figures.thousandths(minutes(method)), agent(choice.use()), new Answer.Span(dwell.from(), dwell.to()),
                wetness.of(choice.use(), dwell),
                method.window().map(w -> new Answer.Span(w.from(), w.to())), method.pressureBar(),
                choice.use().tool().name(), method.technique(), tries(method), method.level(), method.stopSigns(),
                risks(choice), ppe(choice.id()), gates(choice), method.waste(), bridges(choice, earlier),
                ifCleared(method), ifMarked(method), reasons(choice, belief));
    }

    /** Minutes for the whole extent, dwell included once: it runs on all spots at the same time. */
    double minutes(Method method) {
        Question.Extent extent = question.extent();
        double work = extent.areaM2().isPresent() && method.minutes().squareMetre().isPresent()
                ? extent.areaM2().getAsDouble() * method.minutes().squareMetre().getAsDouble()
                : extent.spots().orElse(1) * method.minutes().perSpot();
        return work + method.dwell().usual();
    }

    private Optional<Answer.Brought> agent(Use use) {
        Agent agent = use.agent();
        return agent == Agent.NONE ? Optional.empty() : Optional.of(new Answer.Brought(agent.id(), agent.name(),
                agent.dilution(), Mixing.text(use, question.mixing())));
    }

    private Answer.Tries tries(Method method) {
        int done = scene.attempts().stream().filter(a -> a.method().equals(method.id()) && a.hoursAgo() < 24)
                .mapToInt(Attempt::times).sum();
        double contact = scene.attempts().stream()
                .filter(a -> a.family().equals(method.family()) && a.hoursAgo() < 24)
                .mapToDouble(Attempt::contactMinutes).sum();
        return new Answer.Tries(done, method.tries(),
                base.families().get(method.family()).contactCapMinutes().map(cap -> Math.max(0, cap - contact)));
    }

    private List<Answer.Risk> risks(Choice choice) {
        Map<String, List<Because>> texts = new LinkedHashMap<>();
        for (Concluded<Caution> caution : join(choice.judged().cautions(), candidacy.general().cautions())) {
            texts.computeIfAbsent(caution.conclusion().text(), t -> new ArrayList<>()).add(caution.because());
        }
        Stream.of(choice.use().agent().risks(), choice.use().tool().risks(), choice.method().risks())
                .flatMap(List::stream).forEach(r -> texts.computeIfAbsent(r, t -> List.of(entry(choice.method()))));
        return texts.entrySet().stream().map(e -> new Answer.Risk(e.getKey(), e.getValue())).toList();
    }

    /** What a method asks for here, whether it is a rung or first aid. */
    List<Answer.Ppe> ppe(String method) {
        Map<String, List<Concluded<Protect>>> items = new TreeMap<>();
        for (Concluded<Protect> protect : join(candidacy.judged(method).protects(), candidacy.general().protects())) {
            protect.conclusion().items().forEach(i -> items.computeIfAbsent(i, n -> new ArrayList<>()).add(protect));
        }
        return items.entrySet().stream().map(e -> new Answer.Ppe(e.getKey(), where(e.getValue()),
                e.getValue().stream().map(Concluded::because).toList())).toList();
    }

    private static Optional<String> where(List<Concluded<Protect>> demands) {
        List<String> places = demands.stream().map(d -> d.conclusion().where()).distinct().toList();
        return places.contains("") ? Optional.empty() : Optional.of(String.join(" or ", places));
    }

    private List<Answer.GateState> gates(Choice choice) {
        Map<String, List<Because>> byGate = new TreeMap<>();
        for (Concluded<Gated> gate : choice.judged().gates()) {
            List<Because> reasons = byGate.computeIfAbsent(gate.conclusion().gate(), g -> new ArrayList<>());
            if (reasons.stream().noneMatch(b -> b.id().equals(gate.because().id()))) {
                reasons.add(gate.because());
            }
        }
        return byGate.entrySet().stream().map(e -> {
            Gate gate = base.gates().get(e.getKey());
            return new Answer.GateState(gate.id(), gate.name(), candidacy.gates().isOpen(gate, choice.method()) ? "met" : "open",
                    gate.obtain(), e.getValue());
        }).toList();
    }

    private List<Answer.Bridge> bridges(Choice choice, List<Agent> earlier) {
        Map<String, Answer.Bridge> bridges = new LinkedHashMap<>();
        for (Agent before : earlier) {
            sequence.clashes(before, choice.use()).forEach(clash -> {
                Clash said = clash.conclusion();
                bridges.put(before.id() + ">" + said.then(), new Answer.Bridge(before.id(), said.bridge().stream()
                        .filter(around::isPermitted).toList(),
                        said.waitMinutes(), said.text(), rinses.after(before), List.of(clash.because())));
            });
        }
        return List.copyOf(bridges.values());
    }

    private List<Answer.Around> ifCleared(Method method) {
        return around.of(method.afterwards().stream().map(base.methods()::get)
                .map(m -> new Answer.Around(m.id(), m.technique(), List.of(entry(method)))).toList());
    }

    private List<Answer.Around> ifMarked(Method method) {
        Set<Method> corrections = new LinkedHashSet<>(around.corrections(method));
        List<Answer.Around> steps = new ArrayList<>();
        corrections.forEach(m -> steps.add(new Answer.Around(m.id(), m.technique(), List.of(entry(method)))));
        if (steps.isEmpty()) {
            steps.add(new Answer.Around("leave_monitor", "Leave the mark, photograph it, tell the customer (g12).",
                    List.of(entry(method))));
        }
        return steps;
    }

    /** The knowledge entry itself as a reason. */
    static Because entry(Method method) {
        return Because.of(Reason.method(method), "");
    }

    private List<Because> reasons(Choice choice, Belief belief) {
        List<Because> reasons = new ArrayList<>();
        String bond = scene.contaminant().bond().changes()
                ? scene.contaminant().bond().fresh() + ", later " + scene.contaminant().bond().hardened()
                : scene.contaminant().bond().hardened();
        var override = scene.contaminant().overrides().stream()
                .filter(o -> o.methods().contains(choice.id())).findFirst();
        reasons.add(Because.of(Reason.contaminant(scene.contaminant()), override.map(o -> o.why())
                .orElse(choice.method().mechanism().name().toLowerCase(java.util.Locale.ROOT)
                        .replace('_', ' ') + " against " + bond.replace('_', ' ')) + "; chance fresh " + Figures.text(choice.ifFresh())
                + ", hardened " + Figures.text(choice.ifHardened()) + "; believed hardened "
                + Figures.text(Figures.thousandths(belief.hardened()))));
        if (choice.likely().learned()) {
            reasons.add(learned(base, List.of(choice.likely().movedFrom(scene.contaminant().chances(choice.method())))));
        }
        choice.judged().moves().forEach(m -> reasons.add(m.because()));
        reasons.addAll(choice.orderReasons().stream().limit(6).toList());
        return reasons;
    }

    /** A log moved the chance; figures by what was moved. */
    static Because learned(KnowledgeBase base, List<String> figures) {
        return Because.of(Reason.decision(base.decisions().of("learnt-here")), String.join("; ", figures));
    }

    private static <T> List<T> join(List<T> one, List<T> two) {
        List<T> all = new ArrayList<>(one);
        all.addAll(two);
        return all;
    }
}
