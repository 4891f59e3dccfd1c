package rungwise.ladder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Basis;
import rungwise.knowledge.Dwell;
import rungwise.knowledge.Figures;
import rungwise.knowledge.Gate;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.rules.Attempt;
import rungwise.rules.Because;
import rungwise.rules.Caution;
import rungwise.rules.Clash;
import rungwise.rules.Concluded;
import rungwise.rules.Gated;
import rungwise.rules.Narrow;
import rungwise.rules.Protect;
import rungwise.science.Belief;
import rungwise.science.ChanceRange;

/** Writes a chosen method out as a rung: everything the person at the panel needs, each thing with its because. */
final class Assembly {
    private final KnowledgeBase base;
    private final ComputedChances chances;
    private final Wetness wetness;
    private final Standing standing;
    private final Sequence sequence;
    private final Question question;
    private final Scene scene;
    private final Candidacy candidacy;

    Assembly(KnowledgeBase base, ComputedChances chances, Standing standing, Sequence sequence, Question question,
             Scene scene, Candidacy candidacy) {
        this.base = base;
        this.chances = chances;
        this.wetness = new Wetness(base, question, scene);
        this.standing = standing;
        this.sequence = sequence;
        this.question = question;
        this.scene = scene;
        this.candidacy = candidacy;
    }

    List<Answer.Rung> rungs(List<Choice> choices, Belief belief) {
        List<Answer.Rung> rungs = new ArrayList<>();
        List<Agent> earlier = new ArrayList<>();
        scene.attempts().stream().filter(a -> a.hoursAgo() < 24).map(Attempt::agent).forEach(earlier::add);
        for (Choice choice : choices) {
            rungs.add(rung(rungs.size() + 1, choice, belief, earlier));
            earlier.add(choice.use().agent());
        }
        return rungs;
    }

    Answer.Rung rung(int rank, Choice choice, Belief belief, List<Agent> earlier) {
        Method method = choice.method();
        double mean = choice.mean(belief);
        double half = ChanceRange.halfWidth(mean);
        Dwell dwell = narrowed(method.dwell(), choice.judged().narrows());
        return new Answer.Rung(rank, method.id(), method.name(),
                new Answer.Grades(choice.severity().mechanical(), choice.severity().chemical(),
                        choice.severity().thermal(), choice.severity().filmMicrons(), choice.carried().fields()),
                new Answer.Odds(round(mean), round(Math.max(0, mean - half)), round(Math.min(1, mean + half)),
                        chances.isComputed(scene.contaminant().id(), method.id()) ? "computed" : "prior"),
                round(minutes(method)), agent(choice.use().agent()), new Answer.Span(dwell.from(), dwell.to()),
                wetness.of(method, choice.use().agent(), dwell),
                method.window().map(w -> new Answer.Span(w.from(), w.to())), method.pressureBar(),
                choice.use().tool().name(), method.technique(), tries(method), method.level(), method.stopSigns(),
                risks(choice), ppe(choice), gates(choice), method.waste(), bridges(choice, earlier),
                ifCleared(method), ifMarked(method), reasons(choice, belief));
    }

    private static double round(double value) {
        return Math.round(value * 1000) / 1000.0;
    }

    private static Dwell narrowed(Dwell dwell, List<Concluded<Narrow>> narrows) {
        double from = dwell.from();
        double to = dwell.to();
        for (Concluded<Narrow> narrow : narrows) {
            from = Math.min(from * narrow.conclusion().share(), narrow.conclusion().atMostMinutes());
            to = Math.min(to * narrow.conclusion().share(), narrow.conclusion().atMostMinutes());
        }
        return new Dwell(from, to, to == 0 ? 0 : (from + to) / 2);
    }

    /** Minutes for the whole extent, dwell included once: it runs on all spots at the same time. */
    double minutes(Method method) {
        Question.Extent extent = question.extent();
        double work = extent.areaM2().isPresent() && method.minutes().squareMetre().isPresent()
                ? extent.areaM2().getAsDouble() * method.minutes().squareMetre().getAsDouble()
                : extent.spots().orElse(1) * method.minutes().perSpot();
        return work + method.dwell().usual();
    }

    private static Optional<Answer.Brought> agent(Agent agent) {
        return agent == Agent.NONE ? Optional.empty()
                : Optional.of(new Answer.Brought(agent.id(), agent.name(), agent.dilution(), agent.mix()));
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

    private List<Answer.Ppe> ppe(Choice choice) {
        Map<String, List<Because>> items = new TreeMap<>();
        for (Concluded<Protect> protect : join(choice.judged().protects(), candidacy.general().protects())) {
            protect.conclusion().items().forEach(i -> items.computeIfAbsent(i, n -> new ArrayList<>())
                    .add(protect.because()));
        }
        return items.entrySet().stream().map(e -> new Answer.Ppe(e.getKey(), e.getValue())).toList();
    }

    private List<Answer.GateState> gates(Choice choice) {
        Map<String, List<Because>> byGate = new TreeMap<>();
        for (Concluded<Gated> gate : choice.judged().gates()) {
            List<Because> reasons = byGate.computeIfAbsent(gate.conclusion().gate(), g -> new ArrayList<>());
            if (reasons.stream().noneMatch(b -> b.rule().equals(gate.because().rule()))) {
                reasons.add(gate.because());
            }
        }
        return byGate.entrySet().stream().map(e -> {
            Gate gate = base.gates().get(e.getKey());
            return new Answer.GateState(gate.id(), gate.name(), isMet(gate, choice.method()) ? "met" : "open",
                    gate.obtain(), e.getValue());
        }).toList();
    }

    private boolean isMet(Gate gate, Method method) {
        if (candidacy.isGranted(gate, method.id()) || question.done().contains(gate.id())) {
            return true;
        }
        return switch (gate.id()) {
            case "test_spot" -> question.passedTests().contains(method.id());
            case "gauge" -> question.facts().totalFilmMicrons().isPresent()
                    || question.facts().clearMicrons().isPresent();
            case "mask" -> question.done().contains("masked");
            case "cool" -> scene.panel().measured() && method.window()
                    .map(w -> scene.panel().celsius() <= w.to()).orElse(true);
            case "ventilate" -> question.setting().indoors().map(i -> i.airChangesPerHour() >= 4).orElse(true);
            case "supervisor" -> question.workers().stream().anyMatch(w -> w.level().compareTo("L4") >= 0);
            case "ask_paint_age" -> question.facts().paintAgeDays().isPresent();
            case "ask_refinish" -> question.facts().refinished().isPresent();
            default -> false;
        };
    }

    private List<Answer.Bridge> bridges(Choice choice, List<Agent> earlier) {
        Map<String, Answer.Bridge> bridges = new LinkedHashMap<>();
        for (Agent before : earlier) {
            sequence.clash(before, choice.use().agent()).ifPresent(clash -> {
                Clash said = clash.conclusion();
                bridges.put(before.id(), new Answer.Bridge(before.id(), said.bridge().stream()
                        .filter(m -> standing.of(scene.surface(), m).bars().isEmpty()).toList(),
                        said.waitMinutes(), said.text(), List.of(clash.because())));
            });
        }
        return List.copyOf(bridges.values());
    }

    private List<Answer.Around> ifCleared(Method method) {
        return method.afterwards().stream().map(base.methods()::get)
                .filter(m -> standing.of(scene.surface(), m.id()).bars().isEmpty())
                .map(m -> new Answer.Around(m.id(), m.technique(), List.of(entry(method)))).toList();
    }

    private List<Answer.Around> ifMarked(Method method) {
        Set<Method> corrections = new LinkedHashSet<>(candidacy.corrections(method));
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
        return new Because("method:" + method.id(), "The method's own sheet says so.", method.note(), List.of(),
                method.sources(), method.basis());
    }

    private List<Because> reasons(Choice choice, Belief belief) {
        List<Because> reasons = new ArrayList<>();
        String bond = scene.contaminant().bond().changes()
                ? scene.contaminant().bond().fresh() + ", later " + scene.contaminant().bond().hardened()
                : scene.contaminant().bond().hardened();
        var override = scene.contaminant().overrides().stream()
                .filter(o -> o.methods().contains(choice.id())).findFirst();
        reasons.add(new Because("chance", "It can take off what holds like this.",
                override.map(o -> o.why()).orElse(choice.method().mechanism().name().toLowerCase(java.util.Locale.ROOT)
                        .replace('_', ' ') + " against " + bond.replace('_', ' ')),
                List.of("chance fresh " + Figures.text(choice.ifFresh()) + ", hardened "
                        + Figures.text(choice.ifHardened()) + "; believed hardened "
                        + Figures.text(round(belief.hardened()))),
                override.map(o -> o.sources()).orElse(choice.method().sources()),
                override.map(o -> o.basis()).orElse(Basis.MEMORY)));
        choice.judged().moves().forEach(m -> reasons.add(m.because()));
        reasons.addAll(choice.orderReasons().stream().limit(6).toList());
        return reasons;
    }

    private static <T> List<T> join(List<T> one, List<T> two) {
        List<T> all = new ArrayList<>(one);
        all.addAll(two);
        return all;
    }
}
