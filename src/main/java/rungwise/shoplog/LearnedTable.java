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

    /**
     * What is known of a method, bond class and state on one family of surfaces.
     *
     * @param tries recorded on that family
     */
    record Moved(double by, double tries) {
        static final Moved NOT = new Moved(0, 0);
    }

    private final Map<Cell, Moved> moved;

    LearnedTable(Map<Cell, Moved> moved) {
        this.moved = Map.copyOf(moved);
    }

    @Override
    public Likely of(Contaminant contaminant, Method method, SurfaceKind surface) {
        Chances prior = contaminant.chances(method);
        Moved fresh = moved.getOrDefault(new Cell(method.id(), contaminant.bond().fresh(), false, surface), Moved.NOT);
        Moved hardened = moved.getOrDefault(new Cell(method.id(), contaminant.bond().hardened(), true, surface),
                Moved.NOT);
        if (fresh == Moved.NOT && hardened == Moved.NOT) {
            return Likely.prior(prior);
        }
        double ifFresh = moved(prior.fresh().probability(), fresh);
        double ifHardened = moved(prior.hardened().probability(), hardened);
        // what came off hard comes off fresh, and what did not come off fresh will not come off hard: whichever was tried more counts
        if (prior.hardened().compareTo(prior.fresh()) <= 0 && ifHardened > ifFresh) {
            double both = hardened.tries() >= fresh.tries() ? ifHardened : ifFresh;
            ifFresh = both;
            ifHardened = both;
        }
        boolean moves = Math.abs(ifFresh - prior.fresh().probability()) >= NOTICED
                || Math.abs(ifHardened - prior.hardened().probability()) >= NOTICED;
        return moves ? new Likely(ifFresh, ifHardened, fresh.tries(), hardened.tries(), true) : Likely.prior(prior);
    }

    private static double moved(double prior, Moved by) {
        return Math.max(LOWEST, Math.min(HIGHEST, prior + by.by()));
    }
}
