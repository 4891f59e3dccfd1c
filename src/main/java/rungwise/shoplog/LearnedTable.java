package rungwise.shoplog;

import java.util.Map;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Chances;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.SurfaceKind;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.Likely;

/** Chances as the log has moved them. It never changes; the next one is another table. */
final class LearnedTable implements ChanceTable {
    /** No chance becomes certain, nor quite impossible: Bayes could not come back from there. */
    private static final double LOWEST = 0.01;
    private static final double HIGHEST = 0.98;
    /** A smaller move is none: answers show three decimals. */
    private static final double NOTICED = 0.0005;

    private final Effects effects;
    private final Map<Cell, Double> tried;
    private final Map<Learned.Here, Count> counts;
    private final Map<String, Double> paces;

    /**
     * A table.
     *
     * @param tried  tries recorded, each weighed by the belief in that state
     * @param counts tries as they were made
     * @param paces  minutes over those that knowledge states, by method
     */
    LearnedTable(Effects effects, Map<Cell, Double> tried, Map<Learned.Here, Count> counts, Map<String, Double> paces) {
        this.effects = effects;
        this.tried = Map.copyOf(tried);
        this.counts = Map.copyOf(counts);
        this.paces = Map.copyOf(paces);
    }

    @Override
    public Likely of(Contaminant contaminant, Method method, SurfaceKind surface) {
        Chances prior = contaminant.chances(method);
        double ifFresh = now(prior.fresh().probability(), contaminant, method, false, surface);
        double ifHardened = now(prior.hardened().probability(), contaminant, method, true, surface);
        double triesFresh = tried(contaminant, method, false, surface);
        double triesHardened = tried(contaminant, method, true, surface);
        // what came off hard comes off fresh, and what did not come off fresh will not come off hard: whichever was tried more counts
        if (prior.hardened().compareTo(prior.fresh()) <= 0 && ifHardened > ifFresh) {
            double both = triesHardened >= triesFresh ? ifHardened : ifFresh;
            ifFresh = both;
            ifHardened = both;
        }
        boolean moves = Math.abs(ifFresh - prior.fresh().probability()) >= NOTICED
                || Math.abs(ifHardened - prior.hardened().probability()) >= NOTICED;
        return moves ? new Likely(ifFresh, ifHardened, triesFresh, triesHardened, true) : Likely.prior(prior);
    }

    @Override
    public Count count(Contaminant contaminant, Method method, SurfaceKind surface) {
        return counts.getOrDefault(new Learned.Here(method.id(), contaminant.id(), surface), Count.NONE);
    }

    @Override
    public double pace(Method method) {
        return paces.getOrDefault(method.id(), 1.0);
    }

    private double now(double prior, Contaminant contaminant, Method method, boolean hardened, SurfaceKind surface) {
        return held(effects.chance(prior, method.id(), bond(contaminant, hardened), hardened, surface, contaminant.id()));
    }

    private double tried(Contaminant contaminant, Method method, boolean hardened, SurfaceKind surface) {
        return tried.getOrDefault(new Cell(method.id(), bond(contaminant, hardened), hardened, surface), 0.0);
    }

    private static String bond(Contaminant contaminant, boolean hardened) {
        return hardened ? contaminant.bond().hardened() : contaminant.bond().fresh();
    }

    static double held(double chance) {
        return Math.max(LOWEST, Math.min(HIGHEST, chance));
    }
}
