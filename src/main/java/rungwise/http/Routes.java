package rungwise.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import rungwise.answer.Advisor;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import tools.jackson.databind.json.JsonMapper;

/** The paths and what answers on them. */
final class Routes {
    private static final JsonMapper MAPPER = Mappers.json();

    private final Map<String, Handler> gets = new LinkedHashMap<>();
    private final Map<String, Handler> posts = new LinkedHashMap<>();
    private final String revision;

    Routes(Advisor advisor, Optional<Learning> learning, BooleanSupplier ready) {
        Shelves shelves = new Shelves(advisor);
        Asking asking = new Asking(advisor, () -> learning.map(Learning::chances).orElse(ChanceTable.PRIOR));
        Attempts attempts = new Attempts(advisor.knowledge(), learning);
        byte[] openapi = openapi();
        revision = advisor.knowledge().revision();
        posts.put("/v1/ladders", ctx -> fresh(ctx, asking.answer(ctx)));
        posts.put("/v1/ladders/compare", ctx -> fresh(ctx, asking.compare(ctx)));
        posts.put("/v1/identifications", ctx -> fresh(ctx, asking.identify(ctx)));
        posts.put("/v1/attempts", ctx -> fresh(ctx, attempts.add(ctx)));
        gets.put("/v1/attempts", ctx -> fresh(ctx, attempts.list(ctx)));
        gets.put("/v1/attempts/{id}", ctx -> fresh(ctx, attempts.one(ctx)));
        Spots spots = new Spots(advisor, learning);
        posts.put("/v1/spots", ctx -> fresh(ctx, spots.begin(ctx)));
        posts.put("/v1/spots/{id}/attempts", ctx -> fresh(ctx, spots.attempt(ctx)));
        posts.put("/v1/spots/{id}/facts", ctx -> fresh(ctx, spots.tell(ctx)));
        posts.put("/v1/spots/{id}/undone", ctx -> fresh(ctx, spots.undo(ctx)));
        gets.put("/v1/spots", ctx -> fresh(ctx, spots.list(ctx)));
        gets.put("/v1/spots/{id}", ctx -> fresh(ctx, spots.show(ctx)));
        gets.put("/v1/spots/{id}/step", ctx -> fresh(ctx, spots.step(ctx)));
        Lookup lookup = new Lookup(advisor.knowledge());
        gets.put("/v1/find", ctx -> tagged(ctx, MAPPER.writeValueAsBytes(lookup.find(ctx))));
        gets.put("/v1/learned", ctx -> fresh(ctx, attempts.lessons()));
        for (String shelf : Shelves.NAMES) {
            gets.put("/v1/" + shelf, ctx -> tagged(ctx, MAPPER.writeValueAsBytes(shelves.list(shelf))));
            gets.put("/v1/" + shelf + "/{id}", ctx -> tagged(ctx, MAPPER.writeValueAsBytes(
                    shelves.one(shelf, ctx.pathParam("id")))));
        }
        gets.put("/openapi.json", ctx -> tagged(ctx, openapi));
        gets.put("/problems/{id}", Routes::page);
        gets.put("/health/live", ctx -> fresh(ctx, Map.of("live", true)));
        gets.put("/health/ready", ctx -> {
            if (!ready.getAsBoolean()) {
                ctx.header("Connection", "close");
                throw Refused.said(Kind.NOT_READY, "stopping");
            }
            fresh(ctx, Map.of("ready", true, "revision", revision));
        });
    }

    /** Method and path of every route, as {@code GET /health/live}. */
    java.util.List<String> documented() {
        return java.util.stream.Stream.concat(posts.keySet().stream().map(p -> "POST " + p),
                gets.keySet().stream().map(p -> "GET " + p)).toList();
    }

    void on(RoutesConfig routes) {
        posts.forEach((path, handler) -> routes.addHttpHandler(HandlerType.POST, path, handler));
        gets.forEach((path, handler) -> {
            routes.addHttpHandler(HandlerType.GET, path, handler);
            // left to itself the server answers HEAD without the headers that GET would have
            routes.addHttpHandler(HandlerType.HEAD, path, handler);
        });
    }

    private static void fresh(Context ctx, Object body) {
        ctx.header("Cache-Control", "no-store").contentType("application/json").result(MAPPER.writeValueAsBytes(body));
    }

    private void tagged(Context ctx, byte[] body) {
        Tag tag = Tag.of(revision, body);
        ctx.header("ETag", tag.quoted()).header("Cache-Control", "no-cache");
        if (tag.isIn(ctx.header("If-None-Match"))) {
            ctx.status(304);
        } else {
            ctx.contentType("application/json").result(body);
        }
    }

    private static void page(Context ctx) {
        Kind kind = Kind.byId(ctx.pathParam("id")).orElseThrow(() -> Refused.said(Kind.NOT_FOUND, "no-problem"));
        ctx.contentType("text/plain; charset=utf-8").result(kind.title() + ".\n\n" + kind.remedy() + "\n");
    }

    private static byte[] openapi() {
        try (InputStream in = Routes.class.getResourceAsStream("/openapi.json")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
