package rungwise.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Agent;
import rungwise.knowledge.method.Method;
import rungwise.question.Question;
import rungwise.rules.Phase;
import rungwise.rules.fact.Attempt;
import rungwise.rules.fact.Body;
import rungwise.rules.fact.Water;
import rungwise.rules.said.Advice;
import rungwise.rules.said.Bar;
import rungwise.rules.said.Clash;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusions;
import rungwise.rules.said.Step;
import rungwise.rules.use.Chosen;
import rungwise.rules.use.Laid;
import rungwise.text.Figure;
import rungwise.workup.Zones;

/**
 * What surrounds the rungs: preparation, what must happen between two chemistries, the finish. A step that only the weather bars
 * waits for it; any other barred step is left out.
 */
public final class Surroundings {
    private final Ladder ladder;
    private final List<Asked> steps;
    private final List<Concluded<Advice>> advice;
    private final Map<String, List<Concluded<Bar>>> bars = new HashMap<>();

    public Surroundings(Ladder ladder) {
        this.ladder = ladder;
        Conclusions close = close();
        this.advice = close.of(Advice.class);
        this.steps = asked(close);
        // one look at the rules costs as much as many
        bars.putAll(ladder.verdicts().barsOfSteps(named()));
    }

    private Conclusions close() {
        Situation situation = ladder.situation();
        Question question = situation.question();
        List<String> ids = ladder.rungs().stream().map(Choice::id).toList();
        List<Object> facts = new ArrayList<>(List.of(ladder.revision().base().decisions()));
        // what hardly anybody suspects asks for no preparation
        double counts = ladder.revision().base().decisions().value(DecisionId.BAR_COUNTS);
        situation.suspects().stream().filter(s -> s == situation.suspects().get(0) || s.now() >= counts).forEach(s -> facts.add(
                new Laid(ids, situation.surface(), s.deposit(), Zones.of(situation.surface(), s.contaminant(), question.facts().place(),
                        ladder.revision().base()))));
        for (int i = 0; i < ids.size(); i++) {
            facts.add(new Chosen(ladder.rungs().get(i).use(), i + 1, ladder.mean(ladder.rungs().get(i))));
        }
        ladder.bared().ifPresent(facts::add);
        facts.add(situation.panel());
        OptionalDouble hard = question.setting().waterHardnessMgL();
        facts.add(hard.isPresent() ? new Water(hard.getAsDouble(), true) : Water.UNTOLD);
        facts.add(new Body(question.facts().soiling().orElse(Question.UNKNOWN),
                question.facts().protection().orElse(Question.UNKNOWN)));
        return ladder.revision().book().run(Phase.CLOSE, facts);
    }

    /** What the closing rules ask for, each step once, in its order and with the rungs in theirs. */
    private List<Asked> asked(Conclusions close) {
        List<String> order = ladder.rungs().stream().map(Choice::id).toList();
        Map<String, Asked> byName = new LinkedHashMap<>();
        close.of(Step.class).stream().sorted(Comparator.comparingInt((Concluded<Step> s) -> s.conclusion().order())
                        .thenComparingInt(s -> s.conclusion().rungs().stream().mapToInt(order::indexOf).min().orElse(-1)))
                .forEach(s -> byName.merge(s.conclusion().place() + " " + s.conclusion().name(),
                        new Asked(s.conclusion(), List.of(s.because())), Asked::with));
        return List.copyOf(byName.values());
    }

    /** Every method that may be named beside the rungs: preparation and finish, what follows, corrects or bridges each. */
    private Set<String> named() {
        Set<String> named = new TreeSet<>(Set.of("leave_monitor"));
        steps.forEach(s -> named.add(s.name()));
        addNamed(ladder.rungs(), named);
        ladder.slow().forEach(c -> addNamed(List.of(c), named));
        ladder.markedBy().forEach(c -> named.addAll(c.correction()));
        return named;
    }

    private void addNamed(List<Choice> choices, Set<String> named) {
        List<Agent> earlier = new ArrayList<>(tried());
        for (Choice choice : choices) {
            named.addAll(choice.method().afterwards());
            named.addAll(choice.method().correction());
            earlier.forEach(before -> ladder.revision().sequence().clashes(before, choice.use())
                    .forEach(c -> named.addAll(c.conclusion().bridge())));
            earlier.add(choice.use().agent());
        }
    }

    /** Methods that may be named beside the rungs, permitted or not. */
    public Set<String> methods() {
        return Set.copyOf(bars.keySet());
    }

    /** Words by which the steps may be said to be done, those left out for that reason included. */
    public Set<String> doneWords() {
        return steps.stream().map(s -> s.step().done()).collect(Collectors.toSet());
    }

    /** Names of the figures by which the closing rules say why. */
    public Set<String> figures() {
        return Stream.concat(steps.stream().flatMap(s -> s.because().stream()), advice.stream().map(Concluded::because))
                .flatMap(b -> b.figures().stream()).map(Figure::name).collect(Collectors.toSet());
    }

    /** What was brought to this spot in this visit. */
    public List<Agent> tried() {
        double visit = ladder.revision().base().decisions().value(DecisionId.A_VISIT);
        return ladder.situation().attempts().stream().filter(a -> a.hoursAgo() < visit).map(Attempt::agent).toList();
    }

    /** What must happen before a rung because of what came before it. */
    public List<Concluded<Clash>> clashes(Agent before, Choice choice) {
        return ladder.revision().sequence().clashes(before, choice.use());
    }

    public List<Concluded<Advice>> advice() {
        return advice;
    }

    /** Steps of a place (before, after) that are still to be done and may be, or wait for the weather. */
    public List<Asked> steps(String place) {
        return steps.stream().filter(s -> s.step().place().equals(place))
                .filter(s -> !ladder.situation().question().done().contains(s.step().done()))
                .filter(this::isDoneToday).filter(s -> !s.step().standsIn() || isNeeded(s.step())).toList();
    }

    private boolean isDoneToday(Asked asked) {
        return isPermitted(asked.name()) || waitsFor(asked.name()).isPresent();
    }

    /** Whether none of those that a step stands in for may be done. */
    private boolean isNeeded(Step standIn) {
        return steps.stream().filter(s -> !s.step().standsIn() && s.step().place().equals(standIn.place())
                && s.step().order() == standIn.order()).noneMatch(this::isDoneToday);
    }

    public boolean isPermitted(String step) {
        return bars.getOrDefault(step, List.of()).isEmpty();
    }

    /** What a step waits for that only the weather bars. */
    public Optional<String> waitsFor(String step) {
        List<Concluded<Bar>> here = bars.getOrDefault(step, List.of());
        return here.isEmpty() || !here.stream().allMatch(b -> b.conclusion().isWeather()) ? Optional.empty()
                : Optional.of(here.stream().map(b -> b.conclusion().opensWith()).distinct().sorted().collect(Collectors.joining(" and ")));
    }

    /** Why it waits, or is left out. */
    public List<Concluded<Bar>> barsOf(String step) {
        return bars.getOrDefault(step, List.of());
    }

    /** Corrections of a method that may be named today. */
    public List<Method> corrections(Method method) {
        return List.copyOf(new LinkedHashSet<>(ladder.verdicts().corrections(method).stream().filter(m -> isPermitted(m.id())).toList()));
    }

    /** What puts the mark of the deposit itself right, where one is expected and it may be named today. */
    public Map<Method, Contaminant> markCorrections() {
        Map<Method, Contaminant> corrections = new LinkedHashMap<>();
        ladder.markedBy().forEach(c -> ladder.verdicts().corrections(c.correction()).stream().filter(m -> isPermitted(m.id()))
                .forEach(m -> corrections.putIfAbsent(m, c)));
        return corrections;
    }

    /** Preparation that this rung needs; a photograph is a record and keeps nobody from work. */
    public List<Asked> preparing(Choice rung) {
        return steps("before").stream().filter(s -> !s.name().equals("photograph") && s.step().isFor(rung.id())).toList();
    }
}
