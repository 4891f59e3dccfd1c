package rungwise.http;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;
import rungwise.shoplog.Lessons;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Teacher;
import rungwise.text.Texts;

/** The open log, and the chances it has taught; a log that fails never keeps a ladder from being answered. */
public final class Learning implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Learning.class);
    private static final int LOOK_EVERY_SECONDS = 2;

    private final Shoplog log;
    private final Teacher teacher;
    private final boolean on;
    private final ScheduledExecutorService looks = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "learning");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * Reads the log whole, then follows it.
     *
     * @param on whether ladders use what was learned; the lessons can be read either way
     */
    public Learning(Shoplog log, KnowledgeBase base, boolean on) {
        this.log = log;
        this.teacher = new Teacher(log, base);
        this.on = on;
        if (on) {
            teacher.refresh();
            looks.scheduleWithFixedDelay(this::look, LOOK_EVERY_SECONDS, LOOK_EVERY_SECONDS, TimeUnit.SECONDS);
        }
    }

    private void look() {
        try {
            teacher.refresh();
        } catch (RuntimeException e) { // anything else would end the looking for good
            LOG.warn(Texts.said("log.ladders-keep-their-chances") + " {}", e.getMessage());
        }
    }

    Shoplog log() {
        return log;
    }

    ChanceTable chances() {
        return on ? teacher.table() : ChanceTable.PRIOR;
    }

    Lessons lessons() {
        return teacher.lessons();
    }

    @Override
    public void close() {
        looks.shutdownNow();
        log.close();
    }
}
