package rungwise.shoplog;

import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;

/** Follows a log, also one that others write to, and holds the newest table. */
public final class Teacher {
    private static final int PAGE = 20_000;

    private final Shoplog log;
    private final KnowledgeBase base;
    private Learned learned;
    private long seen;
    private long undone;
    private boolean moved;
    private volatile ChanceTable table = ChanceTable.PRIOR;

    public Teacher(Shoplog log, KnowledgeBase base) {
        this.log = log;
        this.base = base;
        this.learned = new Learned(base);
    }

    /** The table of the last refresh; asking costs nothing. */
    public ChanceTable table() {
        return table;
    }

    /** The table after a look at the log. */
    public ChanceTable fresh() {
        refresh();
        return table;
    }

    /**
     * Takes what has been added to the log since, and what was taken back.
     *
     * @throws LogFailure where the log cannot be read; the table stays as it was
     */
    public synchronized void refresh() {
        long last = log.lastUndone();
        if (last > undone) {
            forget();
            undone = last;
        }
        List<Tried> some = log.tried(seen, PAGE);
        moved |= !some.isEmpty();
        while (!some.isEmpty()) {
            for (Tried tried : some) {
                learned.take(tried);
                seen = tried.seq();
            }
            some = some.size() < PAGE ? List.of() : log.tried(seen, PAGE);
        }
        if (moved) {
            table = learned.table();
            moved = false;
        }
    }

    /** A belief that an attempt has moved cannot be moved back: what is left is learned anew. */
    private void forget() {
        moved |= seen > 0;
        learned = new Learned(base);
        seen = 0;
    }

    /** What the log teaches up to now. */
    public synchronized Lessons lessons() {
        refresh();
        return learned.lessons();
    }
}
