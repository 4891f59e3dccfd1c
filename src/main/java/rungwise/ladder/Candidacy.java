package rungwise.ladder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.knowledge.Chances;
import rungwise.knowledge.Contaminant;
import rungwise.knowledge.Decisions;
import rungwise.knowledge.Family;
import rungwise.knowledge.Gate;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Method;
import rungwise.knowledge.MethodKind;
import rungwise.knowledge.Severity;
import rungwise.knowledge.Surface;
import rungwise.knowledge.SurfaceKind;
import rungwise.question.Question;
import rungwise.question.Shelf;
import rungwise.rules.Answered;
import rungwise.rules.Attempt;
import rungwise.rules.Bar;
import rungwise.rules.Because;
import rungwise.rules.Budget;
import rungwise.rules.Candidate;
import rungwise.rules.Concluded;
import rungwise.rules.Conclusions;
import rungwise.rules.FilmToday;
import rungwise.rules.GateOn;
import rungwise.rules.Gated;
import rungwise.rules.Moved;
import rungwise.rules.NeighbourNote;
import rungwise.rules.NextDoor;
import rungwise.rules.Phase;
import rungwise.rules.RuleBook;
import rungwise.rules.Unsoftened;
import rungwise.rules.Use;
import rungwise.science.FilmBudget;
import rungwise.workup.Air;
import rungwise.workup.Worked;

/** Which methods are permitted on this spot today, how harsh they are here and what trying them costs. */
final class Candidacy {
    private final KnowledgeBase base;
    private final RuleBook book;
    private final Standing standing;
    private final Worked worked;
    private final Question question;
    private final Scene scene;
    private final Map<String, Judged> judged = new LinkedHashMap<>();
    private final Map<String, Choice> choices = new HashMap<>();
    private final Map<String, Judged> onSurface;
    private final Gates gates;
    private final Shelf shelf;
    private Judged general = Judged.NOTHING;
    private List<Concluded<NeighbourNote>> neighbourNotes = List.of();

    Candidacy(KnowledgeBase base, RuleBook book, Standing standing, Worked worked,
              Question question, Scene scene, boolean all) {
        this.base = base;
        this.book = book;
        this.standing = standing;
        this.worked = worked;
        this.question = question;
        this.shelf = new Shelf(question, base);
        this.scene = scene;
        this.onSurface = standing.on(scene.surface());
        this.gates = new Gates(question);
        Set<String> asked = new HashSet<>(question.wanted());
        question.tried().forEach(t -> t.method().ifPresent(asked::add));
        List<Candidate> candidates = new ArrayList<>();
        for (Method method : base.methods().values()) {
            boolean remover = method.kind() == MethodKind.REMOVE;
            if (asked.contains(method.id()) || all && method.kind() != MethodKind.REFER && method.kind() != MethodKind.WAIT
                    || remover && canMatter(scene.contaminant(), method)) {
                candidates.add(candidate(method));
            }
        }
        judge(candidates);
    }

    /** Whether it could be worth trying in some state of the deposit. */
    static boolean canMatter(Contaminant contaminant, Method method) {
        Chances chances = contaminant.chances(method);
        return Math.max(chances.fresh().probability(), chances.hardened().probability()) >= Worth.POINTLESS_BELOW;
    }

    private Candidate candidate(Method method) {
        Use use = standing.use(method, scene.surface());
        double contactDone = 0;
        int triesDone = 0;
        for (Attempt attempt : scene.attempts()) {
            if (attempt.family().equals(method.family())) {
                contactDone += attempt.hoursAgo() < 24 ? attempt.contactMinutes() : 0;
            }
            if (attempt.method().equals(method.id()) && attempt.hoursAgo() < 24) {
                triesDone += attempt.times();
            }
        }
        Family family = base.families().get(method.family());
        double cap = family.contactCapMinutes().orElse(Double.POSITIVE_INFINITY);
        double[] refining = !method.removesFilm() ? new double[0] : method.correction().stream()
                .map(base.methods()::get).filter(m -> m != null && m.family().equals("polish"))
                .mapToDouble(m -> m.severity().filmMicrons()).toArray();
        return new Candidate(use, shelf.lacks(method).isEmpty(), FilmBudget.used(method.severity().filmMicrons(), refining),
                Math.max(0, cap - contactDone),
                method.doneBy().filter(question.done()::contains).isPresent() ? 0 : method.tries() - triesDone);
    }

    private void judge(List<Candidate> candidates) {
        List<Object> facts = new ArrayList<>(scene.facts());
        facts.addAll(candidates);
        Budget budget = budget();
        facts.add(budget);
        filmToday(budget).ifPresent(facts::add);
        facts.addAll(Air.facts(question, base, worked, scene.panel(), candidates));
        facts.addAll(worked.gloves().of(question, candidates));
        question.consent().granted().forEach(g -> facts.add(new Answered(g, true)));
        question.consent().refused().forEach(r -> facts.add(new Answered(r, false)));
        for (Candidate candidate : candidates) {
            String id = candidate.name();
            Judged here = onSurface.getOrDefault(id, Judged.NOTHING).and(askedFor(id));
            judged.put(id, here);
            if (!question.consent().refused().isEmpty()) {
                here.gates().stream().map(g -> g.conclusion().gate()).distinct()
                        .forEach(g -> facts.add(new GateOn(id, g)));
            }
            addNeighbours(candidate, facts);
        }
        Conclusions said = book.run(Phase.TODAY, facts);
        Map<String, Judged> today = Judged.byMethod(said);
        neighbourNotes = said.of(NeighbourNote.class);
        general = today.getOrDefault(Method.EVERY, Judged.NOTHING);
        judged.replaceAll((id, here) -> here.and(today.getOrDefault(id, Judged.NOTHING)));
        refuseWhatTodayGates(today);
        barUnsoftened(candidates);
    }

    /** Gates that only today's rules raise are answered too. */
    private void refuseWhatTodayGates(Map<String, Judged> today) {
        if (question.consent().refused().isEmpty()) {
            return;
        }
        List<Object> facts = new ArrayList<>();
        question.consent().refused().forEach(r -> facts.add(new Answered(r, false)));
        today.forEach((id, here) -> here.gates().forEach(g -> facts.add(new GateOn(id, g.conclusion().gate()))));
        Judged.byMethod(book.run(Phase.TODAY, facts)).forEach((id, here) ->
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
        double taken = scene.attempts().stream().filter(a -> forLife || a.hoursAgo() < 24)
                .mapToDouble(a -> a.times() * Optional.ofNullable(base.methods().get(a.method()))
                        .map(m -> m.severity().filmMicrons()).orElse(0.0)).sum();
        return taken == 0 ? Optional.empty()
                : Optional.of(new FilmToday(FilmBudget.left(budget.microns(), taken), taken));
    }

    /** What an unknown fact would bar becomes a gate that asks for the fact. */
    private Judged askedFor(String method) {
        if (scene.mights().isEmpty()) {
            return Judged.NOTHING;
        }
        Judged here = onSurface.getOrDefault(method, Judged.NOTHING);
        Set<String> known = new HashSet<>();
        here.gates().forEach(g -> known.add(g.conclusion().gate()));
        List<Concluded<Gated>> asked = new ArrayList<>();
        for (Scene.Might might : scene.mights()) {
            Judged then = standing.of(might.surface(), method);
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
        return asked.isEmpty() ? Judged.NOTHING
                : new Judged(List.of(), asked, List.of(), List.of(), List.of(), List.of());
    }

    private void addNeighbours(Candidate candidate, List<Object> facts) {
        for (String neighbour : question.neighbours()) {
            Surface next = base.surfaces().get(neighbour);
            Use there = standing.use(candidate.use().method(), next);
            // what is merely made for something else does the neighbour no harm
            standing.of(next, candidate.name()).bars().stream().map(Concluded::conclusion)
                    .filter(b -> b.kind() != Bar.Kind.MADE_FOR_OTHER).map(Bar::figures).findFirst()
                    .ifPresent(why -> facts.add(new NextDoor(there, why)));
        }
    }

    private void barUnsoftened(List<Candidate> candidates) {
        Set<String> bonds = new HashSet<>(List.of(scene.contaminant().bond().fresh(), scene.contaminant().bond().hardened()));
        boolean softened = candidates.stream().anyMatch(c -> isPermittedEver(c.name())
                && c.use().method().softens().stream().anyMatch(bonds::contains));
        List<Object> unsoftened = new ArrayList<>();
        for (Candidate candidate : candidates) {
            if (candidate.use().method().needsSoftener() && !softened) {
                unsoftened.add(new Unsoftened(candidate));
            }
        }
        if (!unsoftened.isEmpty()) {
            Judged.byMethod(book.run(Phase.TODAY, unsoftened)).forEach((id, here) ->
                    judged.computeIfPresent(id, (m, known) -> known.and(here)));
        }
    }

    Judged judged(String method) {
        return judged.getOrDefault(method, Judged.NOTHING);
    }

    Judged general() {
        return general;
    }

    Map<String, Judged> all() {
        return judged;
    }

    List<Concluded<NeighbourNote>> neighbourNotes() {
        return neighbourNotes;
    }

    boolean isPermitted(String method) {
        return judged(method).bars().isEmpty();
    }

    /** Permitted but for what was already tried today: what the ladder was before the first try. */
    boolean isPermittedEver(String method) {
        return judged.containsKey(method) && base.methods().get(method).kind() == MethodKind.REMOVE && isUnbarred(method);
    }

    /** Whether nothing bars it but tries already made. */
    boolean isUnbarred(String method) {
        return judged(method).bars().stream().allMatch(b -> b.conclusion().isSpent());
    }

    /** Barred by the weather alone, and worth trying once that is mended. */
    boolean waitsForWeather(String method) {
        Judged here = judged(method);
        return !here.bars().isEmpty() && here.bars().stream().allMatch(b -> b.conclusion().isWeather());
    }

    Chances chancesOf(String method) {
        return scene.contaminant().chances(base.methods().get(method));
    }

    Choice choice(String id) {
        return choices.computeIfAbsent(id, this::weighed);
    }

    private Choice weighed(String id) {
        Method method = base.methods().get(id);
        Judged here = judged(id);
        boolean spared = isSpared(method);
        Severity severity = moved(spared ? unfilmed(method.severity()) : method.severity(), here.moves());
        double marring = spared ? 0 : Math.min(100, method.marringPercent() * (shows() ? 2 : 1));
        Chances chances = scene.contaminant().chances(method);
        Key key = new Key(severity.filmMicrons() >= 0.3, severity.worst(), severity.chemical(), severity.mechanical(),
                severity.thermal(), severity.filmMicrons(), marring, -chances.hardened().probability(), id);
        double work = method.minutes().perSpot();
        double dwell = method.dwell().usual();
        Decisions weights = base.decisions();
        double mark = marring / 100;
        double cost = weights.value("minute-of-work") * work + weights.value("minute-of-waiting") * dwell
                + weights.value("micron-of-film") * severity.filmMicrons() + mark * (weights.value("visible-mark") + correctionMinutes(method));
        boolean asks = here.gates().stream().map(g -> base.gates().get(g.conclusion().gate()))
                .anyMatch(g -> g.needsAgreement() && !gates.isGranted(g, id));
        return new Choice(standing.use(method, scene.surface()), here, severity, Likely.prior(chances), key, key, 0, work,
                dwell, cost, mark, asks, List.of());
    }

    /** Film and marring figures are those of clear coat: glass neither loses film nor marks to a softer tool. */
    private boolean isSpared(Method method) {
        return scene.surface().kind() == SurfaceKind.GLASS
                && base.toolOf(method).hardness() < Math.min(4, scene.surface().hardness());
    }

    private static Severity unfilmed(Severity severity) {
        return new Severity(severity.mechanical(), severity.chemical(), severity.thermal(), 0);
    }

    private boolean shows() {
        return scene.surface().hardness() <= 2 || question.facts().colour().filter("dark"::equals).isPresent();
    }

    Gates gates() {
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
                bars.put(step, judged(step).bars().stream().filter(b -> !b.conclusion().isSpent()).toList());
            } else {
                bars.put(step, new ArrayList<>(onSurface.getOrDefault(step, Judged.NOTHING).bars()));
                Candidate candidate = candidate(method);
                facts.add(candidate);
                addNeighbours(candidate, facts);
                onSurface.getOrDefault(step, Judged.NOTHING).gates()
                        .forEach(g -> facts.add(new GateOn(step, g.conclusion().gate())));
            }
        }
        if (!facts.isEmpty()) {
            facts.addAll(scene.facts());
            facts.add(budget());
            question.consent().refused().forEach(r -> facts.add(new Answered(r, false)));
            book.run(Phase.TODAY, facts).of(Bar.class).stream().filter(b -> !b.conclusion().isSpent())
                    .filter(b -> !judged.containsKey(b.conclusion().method()))
                    .forEach(b -> bars.get(b.conclusion().method()).add(b));
        }
        return bars;
    }

    private double correctionMinutes(Method method) {
        return corrections(method).stream().mapToDouble(m -> m.minutes().perSpot()).min()
                .orElse(method.correction().isEmpty() ? 0 : base.decisions().value("handing-over"));
    }

    /** Corrections that this surface bears, in the method's own order. */
    List<Method> corrections(Method method) {
        return method.correction().stream().map(base.methods()::get).filter(m -> m != null
                && onSurface.getOrDefault(m.id(), Judged.NOTHING).bars().isEmpty()
                && isPermittedIfJudged(m.id())).toList();
    }

    private boolean isPermittedIfJudged(String method) {
        return !judged.containsKey(method) || isPermitted(method);
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
