package rungwise.http;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rungwise.answer.Advisor;
import rungwise.text.Texts;

/** The running service. */
public final class Service implements AutoCloseable {
    /** Requests that have begun may finish in this time when the service stops: as long as a body may take to arrive. */
    private static final Duration GRACE = Body.DEADLINE;
    /** To the server: how long a connection may be silent does not change when it stops. */
    private static final long AS_BEFORE = -1;
    private static final int CONNECTIONS = 500;

    private static final Logger LOG = LoggerFactory.getLogger(Service.class);

    private final AtomicBoolean open = new AtomicBoolean(true);
    private final GracefulHandler begun = new GracefulHandler();
    private final Duration grace;
    private final Routes routes;
    private final Javalin javalin;

    private Service(Advisor advisor, Optional<Learning> learning, String host, int port, Duration grace) {
        this.grace = grace;
        routes = new Routes(advisor, learning, open::get);
        HostCheck hosts = HostCheck.forBind(host);
        javalin = Javalin.create(config -> configure(config, hosts)).start(host, port);
    }

    /**
     * Starts to answer.
     *
     * @param host the address to listen on; a loopback address is answered under its own names only
     * @param port 0 = any free port, see {@link #port()}
     */
    public static Service start(Advisor advisor, String host, int port) {
        return start(advisor, Optional.empty(), host, port);
    }

    /**
     * Starts to answer, and to keep attempts.
     *
     * @param learning the log; whoever opened it closes it, after the service
     */
    public static Service start(Advisor advisor, Optional<Learning> learning, String host, int port) {
        return start(advisor, learning, host, port, GRACE);
    }

    static Service start(Advisor advisor, Optional<Learning> learning, String host, int port, Duration grace) {
        return new Service(advisor, learning, host, port, grace);
    }

    public int port() {
        return javalin.port();
    }

    /** Method and path of every route. */
    public List<String> routes() {
        return routes.documented();
    }

    /** Takes nothing new, waits up to the grace for what has begun, and stops; a second call does nothing. */
    @Override
    public void close() {
        if (open.getAndSet(false)) {
            try {
                finish();
            } finally {
                javalin.stop();
            }
        }
    }

    /** Not left to the server: its own wait shortens the silence it bears to a second, and waits for idle connections too. */
    private void finish() {
        for (Connector connector : javalin.jettyServer().server().getConnectors()) {
            connector.shutdown();
        }
        try {
            begun.shutdown().get(grace.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            LOG.warn(Texts.said("log.requests-cut", "millis", grace.toMillis(), "many", begun.getCurrentRequestCount()));
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void configure(JavalinConfig config, HostCheck hosts) {
        config.startup.showJavalinBanner = false;
        config.http.prefer405over404 = true;
        // one strong tag must not stand for a plain and a compressed body
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.http.maxRequestSize = Body.CAP;
        config.jetty.modifyServer(this::harden);
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        config.routes.before(ctx -> {
            ctx.header("X-Content-Type-Options", "nosniff");
            if (!hosts.allows(ctx.header("Host"))) {
                throw Refused.said(Kind.WRONG_HOST, "other-host");
            }
        });
        routes.on(config.routes);
        Problems.on(config.routes);
    }

    private void harden(Server server) {
        begun.setShutdownIdleTimeout(AS_BEFORE);
        server.setHandler(begun);
        server.setErrorHandler(Problems.beneath());
        server.addBean(new NetworkConnectionLimit(CONNECTIONS, server));
    }
}
