package rungwise.ladder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.decision.Decisions;
import rungwise.knowledge.method.Family;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.knowledge.method.Severity;
import rungwise.knowledge.surface.Surface;
import rungwise.question.Question;
import rungwise.question.Shelf;
import rungwise.rules.Phase;
import rungwise.rules.fact.Answered;
import rungwise.rules.fact.Attempt;
import rungwise.rules.fact.Budget;
import rungwise.rules.fact.FilmToday;
import rungwise.rules.said.Bar;
import rungwise.rules.said.Concluded;
import rungwise.rules.said.Conclusion;
import rungwise.rules.said.Conclusions;
import rungwise.rules.said.Gated;
import rungwise.rules.said.Moved;
import rungwise.rules.said.NeighbourNote;
import rungwise.rules.use.Beside;
import rungwise.rules.use.Candidate;
import rungwise.rules.use.GateOn;
import rungwise.rules.use.NextDoor;
import rungwise.rules.use.Use;
import rungwise.science.FilmBudget;
import rungwise.workup.Air;

/**
 * What the rules say of every method on this spot today, over all that the deposit may be: what one of the suspects forbids or
 * asks for counts for the spot. It says what is permitted, how harsh it is here and what trying it costs.
 */
public final class Verdicts {
    private final Revision revision;
    private final KnowledgeBase base;
    private final Situation situation;
    private final Question question;
    private final Decisions decisions;
    private final Map<String, Verdict> judged = new LinkedHashMap<>();
    private final Map<String, Verdict> onSurface;
    private final Gates gates;
    private final Shelf shelf;
    private final boolean comesOff;
    private Verdict general = Verdict.NOTHING;
    private List<Concluded<NeighbourNote>> neighbourNotes = List.of();

    /**
     * Asks the rules.
     *
     * @param all also about methods that could never matter for this deposit
     */
    Verdicts(Revision revision, Situation situation, boolean all) {
        this.revision = revision;
        this.base = revision.base();
        this.situation = situation;
        this.question = situation.question();
        this.decisions = base.decisions();
        this.shelf = new Shelf(question, base);
        this.onSurface = revision.standing().on(situation.surface());
        this.comesOff = base.methods().values().stream().filter(Method::takesAgentsOff).anyMatch(m -> shelf.lacks(m).isEmpty());
        this.gates = new Gates(question);
        Set<String> asked = new HashSet<>(question.wanted());
        question.tried().forEach(t -> t.method().ifPresent(asked::add));
        List<Candidate> candidates = new ArrayList<>();
        for (Method method : base.methods().values()) {
            boolean remover = method.kind() == MethodKind.REMOVE;
            if (asked.contains(method.id()) || all && method.kind() != MethodKind.REFER && method.kind() != MethodKind.WAIT
                    || remover && canMatter(method)) {
                candidates.add(candidate(method));
            }
        }
        judge(candidates);
    }

    /** Whether it could be worth trying in some state of something that this may be. */
    boolean canMatter(Method method) {
        return situation.suspects().stream().map(s -> s.contaminant().chances(method)).anyMatch(c ->
                Math.max(c.fresh().probability(), c.hardened().probability()) >= decisions.value(DecisionId.POINTLESS));
    }

    private Candidate candidate(Method method) {
        Use use = use(method);
        double visit = decisions.value(DecisionId.A_VISIT);
        double contactDone = 0;
        int triesDone = 0;
        for (Attempt attempt : situation.attempts()) {
            if (attempt.family().equals(method.family())) {
                contactDone += attempt.hoursAgo() < visit ? attempt.contactMinutes() : 0;
            }
            if (attempt.method().equals(method.id()) && attempt.hoursAgo() < visit) {
                triesDone += attempt.times();
            }
        }
        Family family = base.families().get(method.family());
        double cap = family.contactCapMinutes().orElse(Double.POSITIVE_INFINITY);
        double[] refining = method.severity().filmMicrons() < decisions.value(DecisionId.FILM_THAT_COUNTS) ? new double[0] : method.correction().stream()
                .map(base.methods()::get).filter(m -> m != null && m.family().equals("polish"))
                .mapToDouble(m -> m.severity().filmMicrons()).toArray();
        return new Candidate(use, shelf.lacks(method).isEmpty(), comesOff, FilmBudget.used(method.severity().filmMicrons(), refining),
                Math.max(0, cap - contactDone),
                method.doneBy().filter(question.done()::contains).isPresent() ? 0 : method.tries() - triesDone);
    }

    private void judge(List<Candidate> candidates) {
        List<Object> facts = new ArrayList<>(situation.facts());
        facts.addAll(candidates);
        Budget budget = budget();
        facts.add(budget);
        filmToday(budget).ifPresent(facts::add);
        facts.addAll(Air.facts(question, base, revision.worked(), situation.panel(), candidates));
        facts.addAll(revision.worked().gloves().of(question, candidates));
        question.consent().granted().forEach(g -> facts.add(new Answered(g, true)));
        question.consent().refused().forEach(r -> facts.add(new Answered(r, false)));
        for (Candidate candidate : candidates) {
            String id = candidate.name();
            Verdict here = onSurface.getOrDefault(id, Verdict.NOTHING).and(askedFor(id));
            judged.put(id, here);
            if (!question.consent().refused().isEmpty()) {
                here.gates().stream().map(g -> g.conclusion().gate()).distinct()
                        .forEach(g -> facts.add(new GateOn(id, g)));
            }
            addNeighbours(candidate, facts);
        }
        Conclusions said = revision.book().run(Phase.TODAY, facts);
        neighbourNotes = said.of(NeighbourNote.class);
        Map<String, Verdict> today = counted(said);
        general = today.getOrDefault(Method.EVERY, Verdict.NOTHING);
        judged.replaceAll((id, here) -> here.and(today.getOrDefault(id, Verdict.NOTHING)));
        refuseWhatTodayGates(today);
    }

    /** By method, less what is forbidden by a suspect that is hardly believed. */
    private Map<String, Verdict> counted(Conclusions said) {
        List<Concluded<? extends Conclusion>> counted = new ArrayList<>();
        for (Concluded<? extends Conclusion> one : said.all()) {
            if (!(one.conclusion() instanceof Bar) || Situation.bars(one, situation.suspects(), decisions)) {
                counted.add(new Concluded<>(one.conclusion(), one.because()));
            }
        }
        return Verdict.byMethod(counted.stream().distinct().toList());
    }

    /** Gates that only today's rules raise are answered too. */
    private void refuseWhatTodayGates(Map<String, Verdict> today) {
        if (question.consent().refused().isEmpty()) {
            return;
        }
        List<Object> facts = new ArrayList<>();
        question.consent().refused().forEach(r -> facts.add(new Answered(r, false)));
        today.forEach((id, here) -> here.gates().forEach(g -> facts.add(new GateOn(id, g.conclusion().gate()))));
        Verdict.byMethod(revision.book().run(Phase.TODAY, facts).all()).forEach((id, here) ->
                judged.computeIfPresent(id, (m, known) -> known.and(here)));
    }

    private Budget budget() {
        return question.facts().clearMicrons().isPresent()
                ? new Budget(FilmBudget.ofReading(question.facts().clearMicrons().getAsDouble()),
                "forLife")
                : new Budget(FilmBudget.PER_VISIT_MICRONS, "aVisit");
    }

    /** What the tries on this spot took: of a visit's budget those of the day, of a budget for life all. */
    private Optional<FilmToday> filmToday(Budget budget) {
        boolean forLife = question.facts().clearMicrons().isPresent();
        double visit = decisions.value(DecisionId.A_VISIT);
        double taken = situation.attempts().stream().filter(a -> forLife || a.hoursAgo() < visit)
                .mapToDouble(a -> a.times() * Optional.ofNullable(base.methods().get(a.method()))
                        .map(m -> m.severity().filmMicrons()).orElse(0.0)).sum();
        return taken == 0 ? Optional.empty()
                : Optional.of(new FilmToday(FilmBudget.left(budget.microns(), taken), taken));
    }

    /** What an unknown fact would bar becomes a gate that asks for the fact. */
    private Verdict askedFor(String method) {
        if (situation.mights().isEmpty()) {
            return Verdict.NOTHING;
        }
        Verdict here = onSurface.getOrDefault(method, Verdict.NOTHING);
        Set<String> known = new HashSet<>();
        here.gates().forEach(g -> known.add(g.conclusion().gate()));
        List<Concluded<Gated>> asked = new ArrayList<>();
        for (Situation.Might might : situation.mights()) {
            Verdict then = revision.standing().of(might.surface(), method);
            boolean asks = !then.bars().isEmpty() && here.bars().isEmpty();
            for (Concluded<Gated> gate : then.gates()) {
                String id = gate.conclusion().gate();
                if (base.gates().get(id).needsAgreement()) {
                    // nobody is asked to agree to what is not known yet
                    asks |= !known.contains(id);
                } else if (known.add(id)) {
                    asked.add(gate);
                }
            }
            if (asks) {
                asked.add(new Concluded<>(new Gated(method, might.said().conclusion().gate(),
                        might.said().conclusion().figures()), might.said().because()));
            }
        }
        return asked.isEmpty() ? Verdict.NOTHING
                : new Verdict(List.of(), asked, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    private void addNeighbours(Candidate candidate, List<Object> facts) {
        for (String neighbour : question.neighbours()) {
            Surface next = base.surfaces().get(neighbour);
            Use there = revision.standing().use(candidate.use().method(), next);
            // what is merely made for something else does the neighbour no harm
            facts.add(revision.standing().of(next, candidate.name()).bars().stream().map(Concluded::conclusion)
                    .filter(b -> b.kind() != Bar.Kind.MADE_FOR_OTHER).map(Bar::figures).findFirst()
                    .<Object>map(why -> new NextDoor(there, why)).orElseGet(() -> new Beside(there)));
        }
    }

    public Use use(Method method) {
        return revision.standing().use(method, situation.surface());
    }

    public Verdict of(String method) {
        return judged.getOrDefault(method, Verdict.NOTHING);
    }

    /** What holds for every method. */
    public Verdict general() {
        return general;
    }

    /** By method: all that were asked about. */
    public Map<String, Verdict> all() {
        return judged;
    }

    public List<Concluded<NeighbourNote>> neighbourNotes() {
        return neighbourNotes;
    }

    public boolean isPermitted(String method) {
        return of(method).isPermitted();
    }

    /** A remover that nothing but earlier tries bars: what could have been a rung before the first try. */
    boolean isPermittedEver(String method) {
        return judged.containsKey(method) && base.methods().get(method).kind() == MethodKind.REMOVE && of(method).isUnbarred();
    }

    /** What a rule on the ladder as a whole bars. */
    void bar(List<Concluded<Bar>> bars) {
        Verdict.byMethod(bars).forEach((id, here) -> judged.computeIfPresent(id, (m, known) -> known.and(here)));
    }

    /** A method weighed by what knowledge says of it. */
    Choice choice(String id, States states) {
        Method method = base.methods().get(id);
        Verdict here = of(id);
        boolean spared = !here.spared().isEmpty();
        Severity severity = moved(spared ? unfilmed(method.severity()) : method.severity(), here.moves());
        double times = Math.max(1, here.and(general).marrings().stream().mapToDouble(m -> m.conclusion().times()).max().orElse(1));
        double marring = spared ? 0 : Math.min(100, method.marringPercent() * times);
        List<Likely> likely = situation.suspects().stream().map(s -> Likely.prior(s.contaminant().chances(method))).toList();
        Key key = new Key(severity.filmMicrons() >= decisions.value(DecisionId.FILM_THAT_COUNTS), severity.worst(), severity.chemical(),
                severity.mechanical(), severity.thermal(), severity.filmMicrons(), marring, -hardenedPrior(method), id);
        double work = base.minutesPerSpot(method);
        double dwell = method.dwell().usual();
        double mark = marring / 100;
        double cost = decisions.value(DecisionId.MINUTE_OF_WORK) * work + decisions.value(DecisionId.MINUTE_OF_WAITING) * dwell
                + decisions.value(DecisionId.MICRON_OF_FILM) * severity.filmMicrons()
                + mark * (decisions.value(DecisionId.VISIBLE_MARK) + correctionMinutes(method));
        boolean asks = here.gates().stream().map(g -> base.gates().get(g.conclusion().gate()))
                .anyMatch(g -> g.needsAgreement() && !gates.isGranted(g, id));
        return new Choice(use(method), here, severity, likely, states.chances(method, likely), key, key, 0, work,
                dwell, cost, mark, asks, List.of());
    }

    /** What knowledge says of it on a hardened deposit; of several suspects that it could matter for, the least. */
    double hardenedPrior(Method method) {
        return situation.suspects().stream().map(s -> s.contaminant().chances(method))
                .filter(c -> situation.suspects().size() == 1 || Math.max(c.fresh().probability(), c.hardened().probability())
                        >= decisions.value(DecisionId.POINTLESS))
                .mapToDouble(c -> c.hardened().probability()).min().orElse(0);
    }

    private static Severity unfilmed(Severity severity) {
        return new Severity(severity.mechanical(), severity.chemical(), severity.thermal(), 0);
    }

    public Gates gates() {
        return gates;
    }

    /** What bars each of these methods as a step around the rungs: the surface, and today. */
    Map<String, List<Concluded<Bar>>> barsOfSteps(Set<String> steps) {
        Map<String, List<Concluded<Bar>>> bars = new HashMap<>();
        List<Object> facts = new ArrayList<>();
        for (String step : steps) {
            Method method = base.methods().get(step);
            if (method == null) {
                continue;
            }
            if (judged.containsKey(step)) {
                // tries and contact are counted for a rung, not for the rinse or wash around it
                bars.put(step, of(step).bars().stream().filter(b -> !b.conclusion().isSpent()).toList());
            } else {
                bars.put(step, new ArrayList<>(onSurface.getOrDefault(step, Verdict.NOTHING).bars()));
                Candidate candidate = candidate(method);
                facts.add(candidate);
                addNeighbours(candidate, facts);
                onSurface.getOrDefault(step, Verdict.NOTHING).gates()
                        .forEach(g -> facts.add(new GateOn(step, g.conclusion().gate())));
            }
        }
        if (!facts.isEmpty()) {
            facts.addAll(situation.facts());
            facts.add(budget());
            question.consent().refused().forEach(r -> facts.add(new Answered(r, false)));
            revision.book().run(Phase.TODAY, facts).of(Bar.class).stream().filter(b -> !b.conclusion().isSpent())
                    .filter(b -> Situation.bars(b, situation.suspects(), decisions))
                    .filter(b -> bars.containsKey(b.conclusion().method()) && !judged.containsKey(b.conclusion().method()))
                    .forEach(b -> bars.get(b.conclusion().method()).add(b));
        }
        return bars;
    }

    private double correctionMinutes(Method method) {
        return corrections(method).stream().mapToDouble(base::minutesPerSpot).min()
                .orElse(method.correction().isEmpty() ? 0 : decisions.value(DecisionId.HANDING_OVER));
    }

    /** Corrections that this surface bears, in the method's own order. */
    public List<Method> corrections(Method method) {
        return corrections(method.correction());
    }

    List<Method> corrections(List<String> ids) {
        return ids.stream().map(base.methods()::get).filter(m -> m != null
                && onSurface.getOrDefault(m.id(), Verdict.NOTHING).bars().isEmpty()
                && (!judged.containsKey(m.id()) || isPermitted(m.id()))).toList();
    }

    private static Severity moved(Severity severity, List<Concluded<Moved>> moves) {
        int[] by = new int[Moved.Cause.values().length];
        for (Concluded<Moved> move : moves) {
            by[move.conclusion().cause().ordinal()] += move.conclusion().by();
        }
        return new Severity(Math.min(10, severity.mechanical() + by[0]), Math.min(10, severity.chemical() + by[1]),
                Math.min(10, severity.thermal() + by[2]), severity.filmMicrons());
    }
}
