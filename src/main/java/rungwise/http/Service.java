package rungwise.http;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.handler.GracefulHandler;
import rungwise.ladder.Advisor;

/** The running service. */
public final class Service implements AutoCloseable {
    /** Requests that have begun may finish in this time when the service stops. */
    private static final Duration GRACE = Duration.ofSeconds(5);
    private static final int CONNECTIONS = 500;

    private final AtomicBoolean open = new AtomicBoolean(true);
    private final Routes routes;
    private final Javalin javalin;

    private Service(Advisor advisor, Optional<Learning> learning, String host, int port) {
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
        return new Service(advisor, learning, host, port);
    }

    public int port() {
        return javalin.port();
    }

    /** Method and path of every route. */
    public List<String> routes() {
        return routes.documented();
    }

    /** Takes nothing new, waits up to the grace for what has begun, and stops. */
    @Override
    public void close() {
        if (open.getAndSet(false)) {
            javalin.stop();
        }
    }

    private void configure(JavalinConfig config, HostCheck hosts) {
        config.startup.showJavalinBanner = false;
        config.http.prefer405over404 = true;
        // one strong tag must not stand for a plain and a compressed body
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.http.maxRequestSize = Body.CAP;
        config.jetty.modifyServer(Service::harden);
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        config.routes.before(ctx -> {
            ctx.header("X-Content-Type-Options", "nosniff");
            if (!hosts.allows(ctx.header("Host"))) {
                throw new Refused(Kind.WRONG_HOST, "The Host header names another host than this service.");
            }
        });
        routes.on(config.routes);
        Problems.on(config.routes);
    }

    private static void harden(Server server) {
        server.setHandler(new GracefulHandler());
        server.setStopTimeout(GRACE.toMillis());
        server.setErrorHandler(Problems.beneath());
        server.addBean(new NetworkConnectionLimit(CONNECTIONS, server));
    }
}
