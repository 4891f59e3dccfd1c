package rungwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import rungwise.answer.Advisor;
import rungwise.http.Learning;
import rungwise.http.Service;
import rungwise.shoplog.Shoplog;
import rungwise.text.Texts;

/** Serves the JSON API. */
@Command(name = "serve", mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {
    private static final int LAST_PORT = 65_535;

    @ParentCommand
    private Main main;

    @Option(names = "--host", defaultValue = "127.0.0.1")
    private String host;

    @Option(names = "--port", defaultValue = "8420")
    private int port;

    @Option(names = "--data", paramLabel = "DIR")
    private String data;

    @Option(names = "--no-learning")
    private boolean noLearning;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > LAST_PORT) {
            throw InputProblem.said("port-out-of-range", "port", port, "last", LAST_PORT);
        }
        Advisor advisor = main.ready();
        Optional<Shoplog> log = Optional.ofNullable(data).map(Shoplog::open);
        log.map(Shoplog::cautions).orElse(List.of()).forEach(spec.commandLine().getErr()::println);
        spec.commandLine().getErr().flush();
        Optional<Learning> learning = log.map(l -> new Learning(l, advisor.knowledge(), !noLearning));
        Service service = Service.start(advisor, learning, host, port);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            try {
                service.close();
            } finally { // whatever became of the service: requests that were cut no longer need the log
                learning.ifPresent(Learning::close);
            }
        }));
        spec.commandLine().getOut().println(Texts.said("cli.serving", "host", host,
                "port", service.port()));
        spec.commandLine().getOut().flush();
        new CountDownLatch(1).await();
        return 0;
    }
}
