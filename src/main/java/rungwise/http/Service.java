package rungwise.http;

import io.javalin.Javalin;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.Mappers;
import rungwise.knowledge.Near;
import rungwise.ladder.Advisor;
import rungwise.ladder.BadQuestion;
import rungwise.ladder.QuestionReader;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The running service: answers over HTTP until it is closed. */
public final class Service implements AutoCloseable {
    private static final long LARGEST_BODY = 1_000_000;
    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    private final JsonMapper json = Mappers.json();
    private final Advisor advisor;
    private final String etag;
    private final boolean loopback;
    private final Set<String> served = new TreeSet<>();
    private final Javalin server;

    private Service(Advisor advisor, String host, int port) {
        this.advisor = advisor;
        this.etag = "\"" + advisor.knowledge().revision() + "\"";
        this.loopback = LOOPBACK.contains(host);
        this.server = Javalin.create(config -> {
            config.http.maxRequestSize = LARGEST_BODY;
            config.http.prefer405over404 = true;
            config.startup.showJavalinBanner = false;
            routes(config.routes);
        }).start(host, port);
    }

    /** Starts on a host and port; port 0 takes a free one. */
    public static Service start(Advisor advisor, String host, int port) {
        return new Service(advisor, host, port);
    }

    public int port() {
        return server.port();
    }

    /** Addresses served, as declared. */
    Set<String> paths() {
        return Set.copyOf(served);
    }

    @Override
    public void close() {
        server.stop();
    }

    private void routes(RoutesConfig routes) {
        routes.before(this::hostIsOurs);
        served.add("/v1/ladders");
        routes.post("/v1/ladders", this::ladder);
        catalogues().forEach((name, items) -> {
            get(routes, "/v1/" + name, tagged(ctx -> body(ctx, 200, items.values())));
            get(routes, "/v1/" + name + "/{id}", tagged(ctx -> item(ctx, items)));
        });
        get(routes, "/openapi.json", tagged(ctx -> ctx.contentType("application/json").result(openApi())));
        get(routes, "/health/live", ctx -> body(ctx, 200, Map.of("status", "live")));
        get(routes, "/health/ready", ctx -> body(ctx, 200, Map.of("status", "ready", "revision",
                advisor.knowledge().revision())));
        routes.exception(BadQuestion.class, (e, ctx) -> problem(ctx, new ProblemDetail("about:blank",
                "The question is readable but cannot be answered", 422, "Mend the fields named in errors.", ctx.path(),
                e.problems())));
        routes.exception(HttpResponseException.class, (e, ctx) -> problem(ctx, ProblemDetail.of(e.getStatus(),
                title(e.getStatus()), detail(e.getStatus(), ctx), ctx.path())));
        routes.exception(Exception.class, (e, ctx) -> problem(ctx, ProblemDetail.of(500, "The service failed",
                "This is a fault of the service, not of the question; report it with the question.", ctx.path())));
    }

    private void get(RoutesConfig routes, String path, Handler handler) {
        served.add(path);
        routes.get(path, handler);
    }

    private Map<String, Map<String, ?>> catalogues() {
        KnowledgeBase base = advisor.knowledge();
        return new TreeMap<>(Map.of("contaminants", base.contaminants(), "surfaces", base.surfaces(), "methods",
                base.methods(), "agents", base.agents(), "sources", base.sources(), "rules",
                advisor.rules().rules()));
    }

    private void ladder(Context ctx) {
        JsonNode tree;
        try {
            tree = json.readTree(ctx.body());
        } catch (JacksonException e) {
            problem(ctx, ProblemDetail.of(400, "The body is not readable JSON",
                    e.getOriginalMessage().lines().findFirst().orElse("") + "; mend it and send it again.",
                    ctx.path()));
            return;
        }
        boolean all = "all".equals(ctx.queryParam("explain"));
        var answer = advisor.answer(QuestionReader.read(tree, advisor.knowledge()), all);
        ctx.header("Cache-Control", "no-store");
        body(ctx, 200, answer);
    }

    private void item(Context ctx, Map<String, ?> items) {
        String id = ctx.pathParam("id");
        Object item = items.get(id);
        if (item == null) {
            problem(ctx, ProblemDetail.of(404, "There is no such entry", "\"" + id + "\" is not known; "
                    + Near.to(id, items.keySet()), ctx.path()));
        } else {
            body(ctx, 200, item);
        }
    }

    /** Knowledge changes only with its revision: a caller that has it need not fetch it again. */
    private Handler tagged(Handler handler) {
        return ctx -> {
            ctx.header("ETag", etag);
            String known = ctx.header("If-None-Match");
            if (known != null && List.of(known.split("\\s*,\\s*")).contains(etag)) {
                ctx.status(304);
            } else {
                handler.handle(ctx);
                if (ctx.statusCode() != 200) {
                    ctx.res().setHeader("ETag", null);
                }
            }
        };
    }

    /** On loopback a page of another name must not reach us by pointing its name here. */
    private void hostIsOurs(Context ctx) {
        String host = ctx.header("Host");
        if (loopback && (host == null || !LOOPBACK.contains(host.replaceAll(":\\d+$", "")))) {
            throw new HttpResponseException(421, "host", Map.of());
        }
    }

    private static String title(int status) {
        return switch (status) {
            case 404 -> "There is nothing here";
            case 405 -> "This method does not fit this address";
            case 413 -> "The body is too large";
            case 421 -> "This host name is not served";
            default -> "The request cannot be served";
        };
    }

    private static String detail(int status, Context ctx) {
        return switch (status) {
            case 404 -> ctx.path() + " is not served; /openapi.json lists what is.";
            case 405 -> ctx.method() + " does not fit " + ctx.path() + "; /openapi.json lists what does.";
            case 413 -> "A question is a page at most; send less than 1 MB.";
            case 421 -> "Ask by localhost or 127.0.0.1.";
            default -> "Compare it with /openapi.json.";
        };
    }

    private void body(Context ctx, int status, Object value) {
        ctx.status(status).contentType("application/json").result(json.writeValueAsBytes(value));
    }

    private void problem(Context ctx, ProblemDetail problem) {
        ctx.status(problem.status()).contentType(ProblemDetail.MEDIA_TYPE).result(json.writeValueAsBytes(problem));
    }

    private static String openApi() {
        try (InputStream in = Service.class.getResourceAsStream("/openapi.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
