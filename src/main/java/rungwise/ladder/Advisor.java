package rungwise.ladder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwise.knowledge.Agent;
import rungwise.knowledge.Figures;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Mappers;
import rungwise.knowledge.Method;
import rungwise.knowledge.Surface;
import rungwise.knowledge.SurfaceKind;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.rules.Advice;
import rungwise.rules.Because;
import rungwise.rules.Body;
import rungwise.rules.Chosen;
import rungwise.rules.Concluded;
import rungwise.rules.Conclusions;
import rungwise.rules.FlushFirst;
import rungwise.rules.Halt;
import rungwise.rules.Hold;
import rungwise.rules.Laid;
import rungwise.rules.Phase;
import rungwise.rules.RuleBook;
import rungwise.rules.Step;
import rungwise.rules.Water;
import rungwise.science.Belief;
import rungwise.workup.ChemistryShare;
import rungwise.workup.ComputedChances;
import rungwise.workup.Rinses;
import rungwise.workup.Wetness;
import rungwise.workup.Worked;
import rungwise.workup.Zones;

/** Answers questions. One advisor holds one revision of knowledge and rules and may be asked from many threads. */
public final class Advisor {
    /** The step after the last rung that takes all chemistry off. */
    private static final String RINSES_OFF = "neutral_rewash";

    private final KnowledgeBase given;
    private final KnowledgeBase base;
    private final ComputedChances computed;
    private final RuleBook book;
    private final Standing standing;
    private final Sequence sequence;
    private final Worked worked;

    public Advisor(KnowledgeBase base, RuleBook book) {
        this.given = base;
        this.computed = ComputedChances.of(base);
        this.base = computed.base();
        this.book = book;
        this.standing = new Standing(base, book);
        this.sequence = Sequence.of(base, book);
        this.worked = new Worked(base);
    }

    /** What the program carries, worked out when it was built. */
    Advisor(Prepared.Whole whole, RuleBook book) {
        this.given = whole.given();
        this.computed = whole.computed();
        this.base = computed.base();
        this.book = book;
        this.standing = new Standing(given, book, Prepared::standing);
        this.sequence = whole.sequence();
        this.worked = new Worked(given);
    }

    Prepared.Whole whole() {
        return new Prepared.Whole(given, computed, sequence);
    }

    Map<String, Judged> standingOn(Surface surface) {
        return standing.on(surface);
    }

    /** A surface as it is, and as facts that nobody told could make it. */
    List<Surface> wherever(Surface surface) {
        Scene scene = Scene.of(QuestionReader.read(Mappers.question().readTree("surface: " + surface.id()), base), base, book);
        return Stream.concat(Stream.of(surface, scene.surface()), scene.mights().stream().map(Scene.Might::surface))
                .distinct().toList();
    }

    public KnowledgeBase knowledge() {
        return given;
    }

    /** Why a method is never used on a surface, whatever the day; empty where nothing bars it. */
    public List<Because> barsOn(String surface, String method) {
        return standing.of(base.surfaces().get(surface), method).bars().stream().map(Concluded::because).distinct().toList();
    }

    /** What is known, with the chances that chemistry filled in. */
    KnowledgeBase reckoned() {
        return base;
    }

    /** How much of what is said of solvents rests on computation. */
    public ChemistryShare chemistry() {
        return ChemistryShare.of(given);
    }

    public RuleBook rules() {
        return book;
    }

    /** Whether the order puts one method before another wherever both are candidates. */
    public boolean comesBefore(String first, String then) {
        return sequence.earlierThan(then).containsKey(first);
    }

    Rinses rinses() {
        return worked.rinses();
    }

    Sequence sequence() {
        return sequence;
    }

    /** Every permitted remover in its fixed order, whether worth trying or not. */
    List<String> order(Question question) {
        Scene scene = Scene.of(question, base, book);
        Candidacy candidacy = new Candidacy(base, book, standing, worked, question, scene, true);
        return new Ordering(sequence).of(candidacy.all().keySet().stream().filter(candidacy::isPermittedEver)
                .map(candidacy::choice).toList()).stream().map(Choice::id).toList();
    }

    /** The answer with bars of those methods only that are proposed by chemistry or wanted. */
    public Answer answer(Question question) {
        return answer(question, false);
    }

    /**
     * The answer.
     *
     * @param question a question whose ids all exist, see {@link QuestionReader}
     * @param all      judge every remover, also those that could never matter for this deposit
     */
    public Answer answer(Question question, boolean all) {
        return answer(question, all, ChanceTable.PRIOR);
    }

    /**
     * The answer.
     *
     * @param chances used for what is worth trying; what is permitted and in which order stays with the priors
     */
    public Answer answer(Question question, boolean all, ChanceTable chances) {
        return told(question, all, chances).answer();
    }

    /**
     * An answer with what it rests on, for whoever weighs several of them together.
     *
     * @param order      every candidate in its fixed order, tried or not, with the chances in use
     * @param barredEver methods that something other than the tries bars
     * @param write      writes a candidate out as a rung, whether it is one or not
     */
    record Told(Answer answer, List<Choice> order, Ladder ladder, Set<String> barredEver, SurfaceKind surface,
                Function<Choice, Answer.Rung> write) {
    }

    Told told(Question question, boolean all, ChanceTable chances) {
        Scene scene = Scene.of(question, base, book);
        Candidacy candidacy = new Candidacy(base, book, standing, worked, question, scene, all);
        Optional<Answer.Held> hold = hold(scene);
        boolean stopped = hold.isPresent() || !scene.derived().of(FlushFirst.class).isEmpty()
                || !scene.derived().of(Halt.class).isEmpty();
        List<Choice> ever = new ArrayList<>();
        for (String id : candidacy.all().keySet()) {
            if (candidacy.isPermittedEver(id)) {
                ever.add(candidacy.choice(id));
            }
        }
        List<Choice> able = ever.stream().filter(c -> c.bestChance() >= Worth.POINTLESS_BELOW).toList();
        List<Choice> ordered = new Ordering(sequence).of(able).stream().map(c -> c.with(
                chances.of(scene.contaminant(), c.method(), scene.surface().kind()))).toList();
        Ladder ladder = Ladder.climb(question, scene, candidacy, ordered, new Worth(base.decisions(), base.families()),
                sequence);
        Conclusions close = close(stopped, ladder, scene, question);
        List<Asked> steps = asked(close, ladder);
        Surroundings around = new Surroundings(candidacy, named(steps, ladder, scene));
        Wetness wetness = new Wetness(base, worked.volatiles(), question, scene.panel());
        Rinses rinses = worked.rinses().by(question.setting().water());
        Assembly assembly = new Assembly(base, computed, wetness, rinses, around, sequence, question, scene, candidacy);
        List<Answer.Rung> rungs = stopped ? List.of() : assembly.rungs(ladder.rungs(), ladder.belief());
        List<Answer.Alternative> alternatives = stopped ? List.of() : alternatives(ladder, assembly);
        LeftOut leftOut = new LeftOut(base, standing, candidacy, scene, question);
        NextStep step = new NextStep(base, question, scene, candidacy, ladder, assembly);
        Answer.WayOut wayOut = step.wayOut(rungs);
        List<Answer.Around> before = around.of(steps(steps, "before", question, ladder, rinses));
        List<Answer.Around> beforeFirst = rungs.isEmpty() ? before : around.of(steps(steps.stream()
                .filter(s -> s.step().isFor(rungs.get(0).method())).toList(), "before", question, ladder, rinses));
        Answer answer = new Answer(base.revision(), question, assumed(scene), hold,
                new Answer.State(Figures.thousandths(ladder.belief().fresh()), Figures.thousandths(ladder.belief().hardened()),
                        Figures.thousandths(scene.deposit().marked())),
                before, rungs, alternatives, leftOut.passedOver(ladder),
                leftOut.barred(all, wetness), neighbours(candidacy, ladder, rungs),
                around.of(steps(steps, "after", question, ladder, rinses)), wayOut,
                step.of(hold, beforeFirst, rungs, alternatives, wayOut),
                expected(stopped ? List.of() : ladder.rungs(), ladder.belief(), scene, assembly), close.of(Advice.class)
                .stream().map(a -> new Answer.Advice(a.conclusion().about(), a.conclusion().text(), List.of(a.because())))
                .distinct().toList());
        return new Told(answer, ordered, ladder, candidacy.all().keySet().stream().filter(id -> !candidacy.isUnbarred(id))
                .collect(Collectors.toSet()), scene.surface().kind(),
                choice -> assembly.rung(1, choice, ladder.belief(), List.of()));
    }

    private static Optional<Answer.Held> hold(Scene scene) {
        List<Concluded<Hold>> holds = scene.derived().of(Hold.class);
        if (holds.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Answer.Held(
                String.join("; ", holds.stream().map(h -> h.conclusion().what()).distinct().toList()),
                String.join(" ", holds.stream().map(h -> h.conclusion().doFirst()).distinct().toList()),
                String.join("; ", holds.stream().map(h -> h.conclusion().until()).distinct().toList()),
                holds.stream().map(Concluded::because).toList()));
    }

    private static List<Answer.Assumed> assumed(Scene scene) {
        return scene.assumptions().stream().map(a -> new Answer.Assumed(a.conclusion().fact(),
                a.conclusion().value(), List.of(a.because()))).toList();
    }

    private List<Answer.Alternative> alternatives(Ladder ladder, Assembly assembly) {
        return ladder.slow().stream().map(c -> {
            Answer.Rung rung = assembly.rungs(List.of(c), ladder.belief()).get(0);
            return new Answer.Alternative(c.id(), c.method().name(), "gentle but slow: stays "
                    + Figures.text(c.dwellMinutes()) + " min", rung);
        }).toList();
    }

    private Conclusions close(boolean stopped, Ladder ladder, Scene scene, Question question) {
        List<Object> facts = new ArrayList<>();
        List<Choice> chosen = stopped ? List.of() : ladder.rungs();
        facts.add(new Laid(chosen.stream().map(Choice::id).toList(), scene.surface(), scene.deposit(), Zones.of(scene.surface(),
                scene.contaminant(), question.facts().place(), base)));
        for (Choice choice : chosen) {
            facts.add(new Chosen(choice.use(), chosen.indexOf(choice) + 1, choice.mean(ladder.belief())));
        }
        facts.add(base.decisions());
        facts.add(scene.panel());
        OptionalDouble hard = question.setting().waterHardnessMgL();
        facts.add(hard.isPresent() ? new Water(hard.getAsDouble(), true) : Water.UNTOLD);
        facts.add(new Body(question.facts().soiling().orElse(Question.UNKNOWN),
                question.facts().protection().orElse(Question.UNKNOWN)));
        return book.run(Phase.CLOSE, facts);
    }

    /** A step with every rule that asks for it. */
    private record Asked(Step step, List<Because> because) {
        /** For the rungs of both; a rule that asks for several of them is one reason, with all that it found. */
        Asked with(Asked other) {
            Map<String, Because> reasons = new LinkedHashMap<>();
            Stream.concat(because.stream(), other.because.stream()).forEach(b -> reasons.merge(b.id(), b, (one, more) ->
                    new Because(one.reason(), distinct(one.figures(), more.figures()), distinct(one.sources(), more.sources()))));
            return new Asked(step.with(other.step), List.copyOf(reasons.values()));
        }

        private static <T> List<T> distinct(List<T> one, List<T> more) {
            return Stream.concat(one.stream(), more.stream()).distinct().toList();
        }
    }

    /** What the closing rules ask for, each step once, in its order and with the rungs in theirs. */
    private static List<Asked> asked(Conclusions close, Ladder ladder) {
        List<String> order = ladder.rungs().stream().map(Choice::id).toList();
        Map<String, Asked> byName = new LinkedHashMap<>();
        close.of(Step.class).stream().sorted(Comparator.comparingInt((Concluded<Step> s) -> s.conclusion().order())
                        .thenComparingInt(s -> s.conclusion().rungs().stream().mapToInt(order::indexOf).min().orElse(-1)))
                .forEach(s -> byName.merge(s.conclusion().place() + " " + s.conclusion().name(),
                        new Asked(s.conclusion(), List.of(s.because())), Asked::with));
        return List.copyOf(byName.values());
    }

    private Set<String> named(List<Asked> steps, Ladder ladder, Scene scene) {
        Set<String> named = new TreeSet<>();
        steps.forEach(s -> named.add(s.step().name()));
        named.addAll(Assembly.namedBeside(ladder.rungs(), scene, sequence));
        ladder.slow().forEach(c -> named.addAll(Assembly.namedBeside(List.of(c), scene, sequence)));
        return named;
    }

    private List<Answer.Around> steps(List<Asked> steps, String place, Question question, Ladder ladder, Rinses rinses) {
        return steps.stream().filter(s -> s.step().place().equals(place))
                .filter(s -> !question.done().contains(s.step().done()))
                .map(s -> step(s, ladder, rinses)).toList();
    }

    private Answer.Around step(Asked asked, Ladder ladder, Rinses rinses) {
        Step step = asked.step();
        Optional<Method> method = Optional.ofNullable(base.methods().get(step.name()));
        String dilution = step.dilution().isEmpty() ? method.map(base::agentOf).map(Agent::dilution).orElse("")
                : step.dilution();
        List<String> wear = method.stream().flatMap(m -> Stream.of(base.agentOf(m).ppe(), base.toolOf(m).ppe(), m.ppe()))
                .flatMap(List::stream).distinct().toList();
        return new Answer.Around(step.name(), step.text(), Optional.of(dilution).filter(d -> !d.isEmpty()), step.onDry(),
                Optional.of(step.watch()).filter(w -> !w.isEmpty()), step.name().equals(RINSES_OFF)
                ? rinses.after(ladder.rungs().stream().map(c -> c.use().agent()).toList()) : Optional.empty(), wear,
                asked.because());
    }

    /** What the rungs would do next door, and what is left out for its sake though it had a real chance. */
    private static List<Answer.Neighbour> neighbours(Candidacy candidacy, Ladder ladder, List<Answer.Rung> rungs) {
        return candidacy.neighbourNotes().stream()
                .filter(n -> n.conclusion().action().equals("barred")
                        ? !rungs.isEmpty() && candidacy.choice(n.conclusion().method()).mean(ladder.belief()) >= Worth.REAL_FROM
                        : rungs.stream().anyMatch(r -> r.method().equals(n.conclusion().method())))
                .map(n -> new Answer.Neighbour(n.conclusion().surface(), n.conclusion().method(),
                        n.conclusion().action(), List.of(n.because()))).toList();
    }

    private Answer.Expected expected(List<Choice> rungs, Belief belief, Scene scene, Assembly assembly) {
        double leftFresh = belief.fresh();
        double leftHardened = belief.hardened();
        double unmarked = 1;
        double likely = 0;
        double worst = 0;
        for (Choice rung : rungs) {
            double reached = leftFresh + leftHardened;
            double minutes = assembly.minutes(rung.method());
            likely += reached * minutes;
            worst += minutes * rung.method().tries();
            unmarked *= 1 - reached * rung.markChance();
            leftFresh *= 1 - rung.ifFresh();
            leftHardened *= 1 - rung.ifHardened();
        }
        double best = rungs.isEmpty() ? 0 : assembly.minutes(rungs.get(0).method());
        return new Answer.Expected(rungs.isEmpty() ? 0 : Figures.thousandths(1 - leftFresh - leftHardened),
                Figures.thousandths(scene.deposit().marked()), Figures.thousandths(1 - unmarked),
                new Answer.Took(Figures.thousandths(best), Figures.thousandths(likely), Figures.thousandths(worst)));
    }
}
