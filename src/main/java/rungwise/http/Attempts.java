package rungwise.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.common.Near;
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
        parameters(ctx, List.of());
        if (!Asking.isJson(ctx.contentType())) {
            throw new Refused(Kind.NOT_JSON, "The content type is " + ctx.contentType() + ".");
        }
        JsonNode tree = Asking.parse(Body.of(ctx));
        Optional<SenderKey> key = key(ctx, tree);
        if (tree.has("id")) {
            throw new Refused(Kind.WRONG_ATTEMPT, "One thing in the attempt is wrong.", List.of(new Refusal.Entry("/id",
                    "the log gives the id", "leave it out; an Idempotency-Key keeps a repeated request from counting twice", List.of())));
        }
        Kept kept;
        try {
            kept = log.add(reader.read(tree), key);
        } catch (BadAttempt e) {
            List<Refusal.Entry> entries = e.problems().stream().map(Refusal.Entry::of).toList();
            throw new Refused(Kind.WRONG_ATTEMPT, entries.size() == 1 ? "One thing in the attempt is wrong."
                    : entries.size() + " things in the attempt are wrong.", entries);
        } catch (KeyReused e) {
            throw new Refused(Kind.KEY_REUSED, e.getMessage());
        } catch (LogFailure e) {
            throw refused(e);
        }
        ctx.status(201).header("Location", "/v1/attempts/" + kept.attempt().id());
        return kept.attempt();
    }

    Listed list(Context ctx) {
        parameters(ctx, PARAMETERS);
        Optional<Cursor> cursor = one(ctx, "cursor").map(text -> Cursor.of(text).orElseThrow(() -> new Refused(
                Kind.UNREADABLE, "The cursor is not one that this service gave out; begin without it.")));
        int limit = one(ctx, "limit").map(Attempts::limit).orElse(LIMIT);
        try {
            Page page = log().page(cursor, limit);
            return new Listed(page.items(), page.next().text(), page.more());
        } catch (LogFailure e) {
            throw refused(e);
        }
    }

    Attempt one(Context ctx) {
        String id = ctx.pathParam("id");
        try {
            return log().one(id).orElseThrow(() -> new Refused(Kind.NOT_FOUND, "\"" + id
                    + "\" is not among the attempts."));
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
        return learning.map(Learning::log).orElseThrow(() -> new Refused(Kind.NO_LOG,
                "The service was started without --data."));
    }

    private static Refused refused(LogFailure e) {
        return new Refused(e.why() == LogFailure.Cause.FULL ? Kind.LOG_FULL : Kind.LOG_UNREACHABLE, e.getMessage());
    }

    private static Optional<SenderKey> key(Context ctx, JsonNode tree) {
        List<String> given = java.util.Collections.list(ctx.req().getHeaders("Idempotency-Key"));
        if (given.size() > 1) {
            throw new Refused(Kind.UNREADABLE, "There is more than one Idempotency-Key.");
        }
        try {
            return given.stream().findFirst().map(header -> SenderKey.of(header, tree));
        } catch (IllegalArgumentException e) {
            throw new Refused(Kind.UNREADABLE, e.getMessage());
        }
    }

    private static void parameters(Context ctx, List<String> known) {
        ctx.queryParamMap().keySet().stream().filter(name -> !known.contains(name)).findFirst().ifPresent(name -> {
            throw new Refused(Kind.UNREADABLE, "There is no parameter \"" + name + "\" here" + (known.isEmpty() ? "."
                    : "; " + Near.among(name, known, "the parameters are") + "."));
        });
    }

    private static Optional<String> one(Context ctx, String name) {
        List<String> given = ctx.queryParamMap().getOrDefault(name, List.of());
        if (given.size() > 1) {
            throw new Refused(Kind.UNREADABLE, "The parameter " + name + " is given more than once.");
        }
        return given.stream().findFirst();
    }

    private static int limit(String text) {
        if (!text.matches("[0-9]{1,4}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > LIMIT_AT_MOST) {
            throw new Refused(Kind.UNREADABLE, "The limit is a number from 1 to " + LIMIT_AT_MOST + ".");
        }
        return Integer.parseInt(text);
    }
}
