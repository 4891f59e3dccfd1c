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
    private final Map<Cell, Tally> cells = new HashMap<>();
    private final Map<Worked, long[]> tries = new HashMap<>();
    private final Map<Worked, Harms> harms = new HashMap<>();
    private final Map<String, Belief> spots = new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Belief> eldest) {
            return size() > SPOTS_OPEN;
        }
    };
    private long counted;
    private long unprepared;
    private long unknown;

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
            weigh(tried, method, contaminant, surface.get());
        }
    }

    private void weigh(Tried tried, Method method, Contaminant contaminant, SurfaceKind surface) {
        Chances prior = contaminant.chances(method);
        String spot = tried.spot().map(s -> tried.shop() + "\n" + s + "\n" + tried.contaminant()).orElse("");
        Belief belief = Optional.ofNullable(spots.get(spot)).orElseGet(() -> belief(tried, contaminant));
        // on a mark itself, a mark that is left is one that did not change
        Outcome outcome = tried.outcome() == Outcome.MARKED ? contaminant.isMark() ? Outcome.NO_CHANGE : Outcome.CLEARED : tried.outcome();
        double cleared = outcome == Outcome.CLEARED ? 1 : 0;
        add(new Cell(method.id(), contaminant.bond().fresh(), false, surface), belief.fresh(), cleared,
                prior.fresh().probability());
        add(new Cell(method.id(), contaminant.bond().hardened(), true, surface), belief.hardened(), cleared,
                prior.hardened().probability());
        if (!spot.isEmpty()) {
            spots.remove(spot);
            if (outcome == Outcome.NO_CHANGE) {
                spots.put(spot, belief.afterFailure(prior.fresh().probability(), prior.hardened().probability()));
            } else if (outcome == Outcome.PARTLY) {
                spots.put(spot, belief);
            }
        }
    }

    private void add(Cell cell, double weight, double cleared, double prior) {
        if (weight > 0) {
            cells.merge(cell, new Tally(weight, weight * cleared, weight * prior), Tally::plus);
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

    private Map<Cell, Tally> pooled() {
        Map<Cell, Tally> pooled = new HashMap<>();
        cells.forEach((cell, tally) -> pooled.merge(pool(cell), tally, Tally::plus));
        return pooled;
    }

    /** All families of surfaces together stand under paint. */
    private static Cell pool(Cell cell) {
        return new Cell(cell.method(), cell.bond(), cell.hardened(), SurfaceKind.PAINT);
    }

    /** Chances for the ladder; a family of surfaces without tries of its own leans on the others. */
    ChanceTable table() {
        Map<Cell, LearnedTable.Moved> moved = new HashMap<>();
        pooled().forEach((pool, all) -> {
            for (SurfaceKind surface : SurfaceKind.values()) {
                Cell cell = new Cell(pool.method(), pool.bond(), pool.hardened(), surface);
                Tally own = cells.getOrDefault(cell, Tally.NONE);
                moved.put(cell, new LearnedTable.Moved(Shift.of(own, all.less(own)), own.tries()));
            }
        });
        return new LearnedTable(moved);
    }

    Lessons lessons() {
        Map<Cell, Tally> pooled = pooled();
        List<Lessons.Move> moves = new ArrayList<>();
        cells.entrySet().stream().filter(e -> e.getValue().tries() >= SHOWN_FROM).forEach(e -> {
            Cell cell = e.getKey();
            Tally own = e.getValue();
            double from = own.expected() / own.tries();
            double to = Math.max(0, Math.min(1, from + Shift.of(own, pooled.get(pool(cell)).less(own))));
            moves.add(new Lessons.Move(cell.method(), cell.bond(), cell.state(), word(cell.surface()), Figures.thousandths(from),
                    Figures.thousandths(to), Figures.thousandths(own.tries()), Figures.thousandths(own.cleared())));
        });
        moves.sort(Comparator.comparingDouble((Lessons.Move m) -> -m.tries()).thenComparing(Lessons.Move::method)
                .thenComparing(Lessons.Move::bond).thenComparing(Lessons.Move::state)
                .thenComparing(Lessons.Move::surface));
        List<Lessons.Alarm> alarms = new ArrayList<>();
        harms.forEach((worked, done) -> alarms.add(new Lessons.Alarm(worked.method(), word(worked.surface()),
                done.count(), tries.get(worked)[0], done.last(), proposal(worked))));
        alarms.sort(Comparator.comparingLong((Lessons.Alarm a) -> -a.harms()).thenComparing(Lessons.Alarm::method)
                .thenComparing(Lessons.Alarm::surface));
        return new Lessons(base.revision(), counted, new Lessons.LeftOut(unprepared, unknown), List.copyOf(moves),
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
