package rungwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine;
import rungwise.answer.Advisor;
import rungwise.http.Learning;
import rungwise.http.Service;
import rungwise.shoplog.Shoplog;
import rungwise.text.Texts;

/** Serves the JSON API. */
@Command(name = "serve", mixinStandardHelpOptions = true, description = "Answer over HTTP until stopped.",
        footer = "Told to stop (SIGTERM, Ctrl+C), it takes nothing new, ends what has begun within ten seconds, closes the log and exits with 143 or 130.")
final class ServeCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Option(names = "--host", defaultValue = "127.0.0.1", description = "address to listen on (${DEFAULT-VALUE})")
    private String host;

    @Option(names = "--port", defaultValue = "8420", description = "port, 0 takes a free one (${DEFAULT-VALUE})")
    private int port;

    @Option(names = "--data", paramLabel = "DIR", description = "keep attempts and spots in this folder, or in "
            + "jdbc:postgresql://host/name; without it none are kept")
    private String data;

    @Option(names = "--no-learning", description = "answer with priors, whatever the log says")
    private boolean noLearning;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() throws InterruptedException {
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
        spec.commandLine().getOut().println(Texts.ENGLISH.say("cli.serving", "host", host,
                "port", service.port()));
        spec.commandLine().getOut().flush();
        new CountDownLatch(1).await();
        return 0;
    }
}
