package rungwise.shoplog;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Figures;
import rungwise.knowledge.decision.AssumptionId;
import rungwise.knowledge.decision.DecisionId;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.method.MethodKind;
import rungwise.knowledge.method.Severity;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.ladder.ChanceTable;
import rungwise.question.Question;
import rungwise.science.Belief;
import rungwise.science.Stubbornness;
import rungwise.text.Texts;

/**
 * Takes attempts in the order of the log and adds up what they teach. The same attempts in the same order teach the same,
 * whether they were taken one by one or after a restart. Not for several threads at once.
 */
final class Learned {
    /** Spots that may still be worked on; an older one is believed by its age alone. */
    private static final int SPOTS_OPEN = 10_000;
    private static final int LAST_HARMS = 5;
    /** A smaller part of a try, believed in a state that is next to ruled out, is not worth a line. */
    private static final double SHOWN_FROM = 0.05;
    /** A warm guess where nobody measured: the same as for a question. */
    private static final double WARM_PANEL_C = 45;

    private final KnowledgeBase base;
    private final Stubbornness spread;
    private final double worth;
    private final Map<On, Tally> cells = new HashMap<>();
    private final Map<Worked, long[]> tries = new HashMap<>();
    private final Map<Worked, Harms> harms = new HashMap<>();
    private final Map<Here, long[]> here = new HashMap<>();
    private final Map<String, Open> open = new LinkedHashMap<>();
    private final Map<Series, long[]> closed = new LinkedHashMap<>();
    private final Paces paces;
    private Effects effects;
    private long counted;
    private long unprepared;
    private long unknown;

    /** A spot that is still worked on: what is believed of it now, and what was tried. */
    private record Open(Belief belief, Series series) {
    }

    /** A chance of one deposit. */
    private record On(Cell cell, String contaminant) {
    }

    /** A method on one deposit and one family of surfaces. */
    record Here(String method, String contaminant, SurfaceKind surface) {
    }

    /** A method on a family of surfaces. */
    private record Worked(String method, SurfaceKind surface) {
    }

    /** How often, and the ids of the last ones. */
    private record Harms(long count, List<String> last) {
        static final Harms NONE = new Harms(0, List.of());

        Harms and(String attempt) {
            List<String> ids = new ArrayList<>(last);
            ids.add(attempt);
            return new Harms(count + 1, List.copyOf(ids.subList(Math.max(0, ids.size() - LAST_HARMS), ids.size())));
        }
    }

    Learned(KnowledgeBase base) {
        this.base = base;
        this.spread = new Stubbornness(base.assumptions().value(AssumptionId.STUBBORN_SPOTS));
        this.worth = base.decisions().value(DecisionId.LEARNT_HERE);
        this.paces = new Paces(base, worth);
    }

    void take(Tried tried) {
        Method method = base.methods().get(tried.method());
        Optional<SurfaceKind> surface = surface(tried.surface());
        Contaminant contaminant = base.contaminants().get(tried.contaminant());
        if (method != null && surface.isPresent()) {
            Worked worked = new Worked(method.id(), surface.get());
            tries.computeIfAbsent(worked, w -> new long[1])[0]++;
            if (tried.outcome() == Outcome.HARM) {
                harms.put(worked, harms.getOrDefault(worked, Harms.NONE).and(tried.id()));
            }
        }
        if (method == null || surface.isEmpty() || contaminant == null || method.kind() != MethodKind.REMOVE) {
            unknown++;
        } else if (!tried.prepared()) {
            unprepared++;
        } else {
            counted++;
            tried.minutes().ifPresent(m -> paces.take(method, m));
            weigh(tried, method, contaminant, surface.get());
        }
    }

    private void weigh(Tried tried, Method method, Contaminant named, SurfaceKind surface) {
        Contaminant contaminant = tried.surface().size() == 1 ? named.on(base.surfaces().get(tried.surface().get(0))) : named;
        Chances prior = contaminant.chances(method);
        String spot = tried.spot().map(s -> tried.shop() + "\n" + s + "\n" + tried.contaminant()).orElse("");
        // on a mark itself, a mark that is left is one that did not change
        Outcome outcome = tried.outcome() == Outcome.MARKED ? contaminant.isMark() ? Outcome.NO_CHANGE : Outcome.CLEARED : tried.outcome();
        // some effect is a success of part
        double worked = outcome == Outcome.CLEARED ? 1 : outcome == Outcome.PARTLY ? base.decisions().value(DecisionId.PARTLY_TELLS) : 0;
        Open known = Optional.ofNullable(open.remove(spot)).orElseGet(() -> {
            Belief belief = belief(tried, contaminant);
            return new Open(belief, new Series(named.id(), Figures.thousandths(belief.hardened()), List.of()));
        });
        Belief belief = known.belief();
        Cell fresh = new Cell(method.id(), contaminant.bond().fresh(), false, surface);
        Cell hardened = new Cell(method.id(), contaminant.bond().hardened(), true, surface);
        add(new On(fresh, named.id()), belief.fresh(), worked, prior.fresh().probability());
        add(new On(hardened, named.id()), belief.hardened(), worked, prior.hardened().probability());
        long[] count = here.computeIfAbsent(new Here(method.id(), named.id(), surface), h -> new long[2]);
        count[0]++;
        count[1] += outcome == Outcome.CLEARED ? 1 : 0;
        Series series = known.series().and(new Series.Step(fresh, hardened, worked, prior.fresh().probability(), prior.hardened().probability()));
        if (!spot.isEmpty() && outcome == Outcome.NO_CHANGE) {
            open.put(spot, new Open(belief.afterFailure(prior.fresh().probability(), prior.hardened().probability()), series));
        } else if (!spot.isEmpty() && outcome == Outcome.PARTLY) {
            open.put(spot, new Open(belief, series));
        } else {
            close(series);
        }
        if (open.size() > SPOTS_OPEN) {
            close(open.remove(open.keySet().iterator().next()).series());
        }
        effects = null;
    }

    private void close(Series series) {
        closed.computeIfAbsent(series, s -> new long[1])[0]++;
    }

    /** Worked out anew from all series, so that the same log teaches the same however it was read. */
    private Effects effects() {
        if (effects == null) {
            Map<Series, long[]> all = new LinkedHashMap<>();
            closed.forEach((series, times) -> all.put(series, times.clone()));
            open.values().forEach(o -> all.computeIfAbsent(o.series(), s -> new long[1])[0]++);
            effects = Effects.of(all, worth, spread);
        }
        return effects;
    }

    private void add(On on, double weight, double worked, double prior) {
        if (weight > 0) {
            cells.merge(on, new Tally(weight, weight * worked, weight * prior), Tally::plus);
        }
    }

    /** As a question of that age would be believed. */
    private static Belief belief(Tried tried, Contaminant contaminant) {
        if (tried.ageHours().isEmpty()) {
            return contaminant.hardens().isNever() ? new Belief(0) : Belief.UNKNOWN;
        }
        return Belief.byAge(tried.ageHours().getAsDouble(), Belief.hoursAt(contaminant.hardens().cool(),
                contaminant.hardens().hot(), tried.warmestC().orElse(WARM_PANEL_C)));
    }

    /** Surfaces of two kinds together count as paint, as they do in a question. */
    private Optional<SurfaceKind> surface(List<String> ids) {
        Set<SurfaceKind> kinds = new LinkedHashSet<>();
        for (String id : ids) {
            Surface surface = base.surfaces().get(id);
            if (id.equals(Question.UNKNOWN) || surface == null) {
                return Optional.empty();
            }
            kinds.add(surface.kind());
        }
        return Optional.of(kinds.size() == 1 ? kinds.iterator().next() : SurfaceKind.PAINT);
    }

    /** Chances for the ladder; a family of surfaces without tries of its own leans on the others. */
    ChanceTable table() {
        Map<Cell, Double> tried = new HashMap<>();
        cells.forEach((on, tally) -> tried.merge(on.cell(), tally.tries(), Double::sum));
        Map<Here, ChanceTable.Count> counts = new HashMap<>();
        here.forEach((what, count) -> counts.put(what, new ChanceTable.Count(count[0], count[1])));
        return new LearnedTable(effects(), tried, counts, paces.times());
    }

    Lessons lessons() {
        Map<Cell, Tally> own = new HashMap<>();
        Map<Cell, Double> now = new HashMap<>();
        cells.forEach((on, tally) -> {
            Cell cell = on.cell();
            own.merge(cell, tally, Tally::plus);
            now.merge(cell, tally.tries() * LearnedTable.held(effects().chance(tally.expected() / tally.tries(), cell.method(), cell.bond(),
                    cell.hardened(), cell.surface(), on.contaminant())), Double::sum);
        });
        List<Lessons.Move> moves = new ArrayList<>();
        own.entrySet().stream().filter(e -> e.getValue().tries() >= SHOWN_FROM).forEach(e -> {
            Cell cell = e.getKey();
            Tally tally = e.getValue();
            moves.add(new Lessons.Move(cell.method(), cell.bond(), cell.state(), word(cell.surface()), Figures.thousandths(tally.expected() / tally.tries()),
                    Figures.thousandths(now.get(cell) / tally.tries()), Figures.thousandths(tally.tries()), Figures.thousandths(tally.cleared())));
        });
        moves.sort(Comparator.comparingDouble((Lessons.Move m) -> -m.tries()).thenComparing(Lessons.Move::method)
                .thenComparing(Lessons.Move::bond).thenComparing(Lessons.Move::state)
                .thenComparing(Lessons.Move::surface));
        List<Lessons.Alarm> alarms = new ArrayList<>();
        harms.forEach((worked, done) -> alarms.add(new Lessons.Alarm(worked.method(), word(worked.surface()),
                done.count(), tries.get(worked)[0], done.last(), proposal(worked))));
        alarms.sort(Comparator.comparingLong((Lessons.Alarm a) -> -a.harms()).thenComparing(Lessons.Alarm::method)
                .thenComparing(Lessons.Alarm::surface));
        return new Lessons(base.revision(), counted, new Lessons.LeftOut(unprepared, unknown), List.copyOf(moves), paces.lessons(),
                List.copyOf(alarms));
    }

    private Lessons.Proposal proposal(Worked worked) {
        Method method = base.methods().get(worked.method());
        Map<String, Integer> grades = grades(method.severity());
        String cause = grades.entrySet().stream().max(Map.Entry.<String, Integer>comparingByValue()
                .thenComparing(Map.Entry::getKey)).orElseThrow().getKey();
        int from = grades.get(cause);
        int to = Math.min(10, from + 1);
        return new Lessons.Proposal(cause, from, to, "test_spot", Texts.said("learned.proposal", "method", method.name(), "to", to,
                "from", from, "cause", cause, "surface", word(worked.surface())));
    }

    private static Map<String, Integer> grades(Severity severity) {
        return new TreeMap<>(Map.of("mechanical", severity.mechanical(), "chemical", severity.chemical(), "thermal",
                severity.thermal()));
    }

    private static String word(SurfaceKind surface) {
        return surface.name().toLowerCase(Locale.ROOT);
    }
}
