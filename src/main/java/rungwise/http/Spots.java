package rungwise.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rungwise.answer.Advisor;
import rungwise.diagnosis.SpotAnswer;
import rungwise.shoplog.BadAttempt;
import rungwise.shoplog.Cursor;
import rungwise.shoplog.KeyReused;
import rungwise.shoplog.LogFailure;
import rungwise.shoplog.SenderKey;
import rungwise.spot.SpotMemory;
import rungwise.spot.SpotNow;
import rungwise.spot.SpotTried;
import rungwise.spot.SpotsListed;
import rungwise.spot.UnknownSpot;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** Spots that are worked on. */
final class Spots {
    private static final String WHICH = "which";
    private static final String OPEN = "open";
    private static final String ALL = "all";

    private final Optional<SpotMemory> memory;

    Spots(Advisor advisor, Optional<Learning> learning) {
        this.memory = learning.map(l -> new SpotMemory(advisor, l.log().spots(), l::chances, InstantSource.system()));
    }

    /** Keeps one; it is on the disk before the answer goes out. */
    SpotNow begin(Context ctx) throws IOException {
        SpotMemory open = open();
        Parameters.only(ctx, List.of());
        JsonNode question = Asking.tree(ctx);
        Optional<SenderKey> key = Attempts.key(ctx, question);
        SpotNow spot = kept(() -> open.begin(question, key));
        ctx.status(201).header("Location", "/v1/spots/" + spot.id());
        return spot;
    }

    /** Keeps an attempt on a spot, in the log as any other. */
    SpotTried attempt(Context ctx) throws IOException {
        SpotMemory open = open();
        Sent attempt = sent(ctx);
        SpotTried tried = kept(() -> open.attempt(attempt.spot(), attempt.body(), attempt.key()));
        ctx.status(201).header("Location", "/v1/attempts/" + tried.attempt().id());
        return tried;
    }

    SpotNow tell(Context ctx) throws IOException {
        SpotMemory open = open();
        Sent facts = sent(ctx);
        return kept(() -> open.tell(facts.spot(), facts.body(), facts.key()));
    }

    /** Takes an attempt back. */
    SpotNow undo(Context ctx) throws IOException {
        SpotMemory open = open();
        Sent order = sent(ctx);
        SpotNow spot = kept(() -> {
            try {
                return open.undo(order.spot(), order.body(), order.key());
            } catch (BadAttempt e) {
                throw new Refused(Kind.NOT_UNDONE, Texts.said("refusal.no-order"), e.problems().stream().map(Refusal.Entry::of).toList());
            }
        });
        ctx.status(201).header("Location", "/v1/spots/" + spot.id());
        return spot;
    }

    /** Those that are open, or all. */
    SpotsListed list(Context ctx) {
        SpotMemory open = open();
        Parameters.only(ctx, List.of("cursor", "limit", WHICH));
        String which = Parameters.one(ctx, WHICH).orElse(OPEN);
        if (!which.equals(OPEN) && !which.equals(ALL)) {
            throw Refused.said(Kind.UNREADABLE, "open-or-all", "name", WHICH, "said", which);
        }
        Optional<Cursor> from = Attempts.cursor(ctx);
        int limit = Attempts.limit(ctx);
        return kept(() -> open.list(from, limit, which.equals(ALL)));
    }

    SpotNow show(Context ctx) {
        SpotMemory open = open();
        Parameters.only(ctx, List.of());
        return kept(() -> open.show(ctx.pathParam("id"), false));
    }

    SpotAnswer step(Context ctx) {
        SpotMemory open = open();
        boolean all = Asking.all(ctx);
        return kept(() -> open.show(ctx.pathParam("id"), all)).answer();
    }

    /** What was sent about a spot; the same words about another one are something else. */
    private record Sent(String spot, JsonNode body, Optional<SenderKey> key) {
    }

    private static Sent sent(Context ctx) throws IOException {
        Parameters.only(ctx, List.of());
        JsonNode body = Asking.tree(ctx);
        String spot = ctx.pathParam("id");
        return new Sent(spot, body, Attempts.key(ctx, SpotMemory.on(spot, body)));
    }

    private SpotMemory open() {
        return memory.orElseThrow(Attempts::noLog);
    }

    private static <T> T kept(Supplier<T> work) {
        try {
            return Asking.asked(work);
        } catch (UnknownSpot e) {
            throw Refused.said(Kind.NOT_FOUND, "no-spot", "id", e.id());
        } catch (BadAttempt e) {
            throw Attempts.wrong(e.problems());
        } catch (KeyReused e) {
            throw new Refused(Kind.KEY_REUSED, e.getMessage());
        } catch (LogFailure e) {
            throw Attempts.refused(e);
        }
    }
}
