package rungwise.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.question.Problem;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.AttemptReader;
import rungwise.shoplog.BadAttempt;
import rungwise.shoplog.Cursor;
import rungwise.shoplog.Kept;
import rungwise.shoplog.KeyReused;
import rungwise.shoplog.Lessons;
import rungwise.shoplog.LogFailure;
import rungwise.shoplog.Page;
import rungwise.shoplog.SenderKey;
import rungwise.shoplog.Shoplog;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** Attempts taken in and given out. */
final class Attempts {
    private static final int LIMIT = 100;
    private static final int LIMIT_AT_MOST = 1_000;
    private static final List<String> PARAMETERS = List.of("cursor", "limit");

    private final Optional<Learning> learning;
    private final AttemptReader reader;

    Attempts(KnowledgeBase base, Optional<Learning> learning) {
        this.learning = learning;
        this.reader = new AttemptReader(base, InstantSource.system());
    }

    /** Attempts and where to go on. */
    record Listed(List<Attempt> items, String next, boolean more) {
    }

    /** Keeps one; it is on the disk before the answer goes out. */
    Attempt add(Context ctx) throws IOException {
        Shoplog log = log();
        Parameters.only(ctx, List.of());
        JsonNode tree = Asking.tree(ctx);
        Optional<SenderKey> key = key(ctx, tree);
        if (tree.has("id")) {
            throw wrong(List.of(Problem.said("/id", "id-sent")));
        }
        Kept kept;
        try {
            kept = log.add(reader.read(tree), key);
        } catch (BadAttempt e) {
            throw wrong(e.problems());
        } catch (KeyReused e) {
            throw new Refused(Kind.KEY_REUSED, e.getMessage());
        } catch (LogFailure e) {
            throw refused(e);
        }
        ctx.status(201).header("Location", "/v1/attempts/" + kept.attempt().id());
        return kept.attempt();
    }

    static Refused wrong(List<Problem> problems) {
        return new Refused(Kind.WRONG_ATTEMPT, Texts.said(problems.size() == 1 ? "refusal.one-thing-in-the-attempt"
                : "refusal.things-in-the-attempt", "many", problems.size()),
                problems.stream().map(Refusal.Entry::of).toList());
    }

    Listed list(Context ctx) {
        Parameters.only(ctx, PARAMETERS);
        try {
            Page page = log().page(cursor(ctx), limit(ctx));
            return new Listed(page.items(), page.next().text(), page.more());
        } catch (LogFailure e) {
            throw refused(e);
        }
    }

    Attempt one(Context ctx) {
        String id = ctx.pathParam("id");
        try {
            return log().one(id).orElseThrow(() -> Refused.said(Kind.NOT_FOUND, "no-attempt", "id", id));
        } catch (LogFailure e) {
            throw refused(e);
        }
    }

    Lessons lessons() {
        log();
        try {
            return learning.orElseThrow().lessons();
        } catch (LogFailure e) {
            throw refused(e);
        }
    }

    private Shoplog log() {
        return learning.map(Learning::log).orElseThrow(Attempts::noLog);
    }

    static Refused noLog() {
        return Refused.said(Kind.NO_LOG, "no-data");
    }

    static Refused refused(LogFailure e) {
        return new Refused(e.why() == LogFailure.Cause.FULL ? Kind.LOG_FULL : Kind.LOG_UNREACHABLE, e.getMessage());
    }

    /** The sender's key, for what it goes with. */
    static Optional<SenderKey> key(Context ctx, JsonNode tree) {
        List<String> given = java.util.Collections.list(ctx.req().getHeaders("Idempotency-Key"));
        if (given.size() > 1) {
            throw Refused.said(Kind.UNREADABLE, "more-than-one-key");
        }
        try {
            return given.stream().findFirst().map(header -> SenderKey.of(header, tree));
        } catch (IllegalArgumentException e) {
            throw Refused.said(Kind.UNREADABLE, "bad-key");
        }
    }

    /** Where a list goes on. */
    static Optional<Cursor> cursor(Context ctx) {
        return Parameters.one(ctx, "cursor").map(text -> Cursor.of(text).orElseThrow(() -> Refused.said(Kind.UNREADABLE, "no-cursor")));
    }

    /** How many a list holds at most. */
    static int limit(Context ctx) {
        return Parameters.one(ctx, "limit").map(Attempts::limit).orElse(LIMIT);
    }

    private static int limit(String text) {
        if (!text.matches("[0-9]{1,4}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > LIMIT_AT_MOST) {
            throw Refused.said(Kind.UNREADABLE, "limit", "most", LIMIT_AT_MOST);
        }
        return Integer.parseInt(text);
    }
}
