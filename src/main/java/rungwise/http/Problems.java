package rungwise.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.nio.ByteBuffer;
import java.util.UUID;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rungwise.knowledge.load.Mappers;
import rungwise.text.Texts;
import tools.jackson.databind.json.JsonMapper;

/** Every way out that is an error, written as problem+json. */
final class Problems {
    private static final Logger LOG = LoggerFactory.getLogger(Problems.class);
    private static final JsonMapper MAPPER = Mappers.json();

    private Problems() {
    }

    static void on(RoutesConfig routes) {
        routes.exception(Refused.class, (e, ctx) -> write(ctx, e.at(ctx.path())));
        routes.exception(HttpResponseException.class, (e, ctx) -> {
            Kind kind = Kind.of(e.getStatus());
            if (kind == Kind.WRONG_METHOD) {
                String allowed = e.getDetails().getOrDefault("availableMethods", "");
                ctx.header("Allow", allowed);
                write(ctx, Refusal.of(kind, say("wrong-method", "method", ctx.method(), "allowed", allowed), ctx.path()));
            } else {
                write(ctx, Refusal.of(kind, kind == Kind.NOT_FOUND ? say("no-path", "path", ctx.path()) : say("as-titled", "title", kind.title()),
                        ctx.path()).as(e.getStatus()));
            }
        });
        routes.exception(Exception.class, (e, ctx) -> {
            String mark = UUID.randomUUID().toString();
            LOG.error("Failure {} at {} {}", mark, ctx.method(), ctx.path(), e);
            write(ctx, Refusal.of(Kind.FAILED, say("failed", "mark", mark), ctx.path()));
        });
    }

    static void write(Context ctx, Refusal refusal) {
        ctx.status(refusal.status()).header("Cache-Control", "no-store");
        ctx.contentType(Refusal.MEDIA_TYPE).result(MAPPER.writeValueAsBytes(refusal));
    }

    private static String say(String id, Object... named) {
        return Texts.said("refusal." + id, named);
    }

    /** The server's own words name its classes and settings. */
    private static Refusal beneath(Kind kind, int code, String path) {
        String what = switch (code) {
            case HttpStatus.URI_TOO_LONG_414 -> "address-too-long";
            case HttpStatus.REQUEST_HEADER_FIELDS_TOO_LARGE_431 -> "headers-too-large";
            default -> code < HttpStatus.INTERNAL_SERVER_ERROR_500 ? "request-line" : "failed-beneath";
        };
        return Refusal.of(kind, say(what), Texts.said("refusal." + what + ".do"), path);
    }

    /** For requests that fail before they reach a route: a broken line, headers too large, a stopping server. */
    static ErrorHandler beneath() {
        return new ErrorHandler() {
            @Override
            protected void generateResponse(Request request, Response response, int code, String message,
                                            Throwable cause, Callback callback) {
                Kind kind = Kind.of(code);
                String path = request.getHttpURI() == null ? "/" : Request.getPathInContext(request);
                byte[] body = MAPPER.writeValueAsBytes(kind == Kind.NOT_READY ? Refusal.of(kind, say("stopping"), path).as(code)
                        : beneath(kind, code, path).as(code));
                response.getHeaders().put(HttpHeader.CONTENT_TYPE, Refusal.MEDIA_TYPE);
                response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
                response.write(true, ByteBuffer.wrap(body), callback);
            }
        };
    }
}
