package rungwise.shoplog;

import java.util.List;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;

/** Follows a log, also one that others write to, and holds the newest table. */
public final class Teacher {
    private static final int PAGE = 20_000;

    private final Shoplog log;
    private final Learned learned;
    private long seen;
    private volatile ChanceTable table = ChanceTable.PRIOR;

    public Teacher(Shoplog log, KnowledgeBase base) {
        this.log = log;
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
     * Takes what has been added to the log since.
     *
     * @throws LogFailure where the log cannot be read; the table stays as it was
     */
    public synchronized void refresh() {
        List<Tried> some = log.tried(seen, PAGE);
        boolean any = !some.isEmpty();
        while (!some.isEmpty()) {
            for (Tried tried : some) {
                learned.take(tried);
                seen = tried.seq();
            }
            some = some.size() < PAGE ? List.of() : log.tried(seen, PAGE);
        }
        if (any) {
            table = learned.table();
        }
    }

    /** What the log teaches up to now. */
    public synchronized Lessons lessons() {
        refresh();
        return learned.lessons();
    }
}
