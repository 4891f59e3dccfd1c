package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.Cursor;
import rungwise.shoplog.Exchange;
import rungwise.shoplog.Page;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Undone;
import rungwise.text.Texts;

/** Shows attempts. */
@Command(name = "log", mixinStandardHelpOptions = true, subcommands = LogAddCommand.class)
final class LogCommand implements Callable<Integer> {
    private static final int PAGE = 1_000;

    @Mixin
    private DataOption data;

    @ArgGroup
    private Form form;

    @Option(names = "--last", paramLabel = "N", defaultValue = "20")
    private int last;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    private static final class Form {
        @Option(names = "--json")
        private boolean json;

        @Option(names = "--csv")
        private boolean csv;
    }

    @Override
    public Integer call() {
        if (last < 1 || last > 10_000) {
            throw InputProblem.said("last-out-of-range", "last", last);
        }
        PrintWriter out = spec.commandLine().getOut();
        try (Shoplog log = data.existing()) {
            if (form == null) {
                show(log, out);
            } else {
                all(log, form.json ? Exchange.lines(out) : Exchange.csv(out));
            }
        }
        out.flush();
        return 0;
    }

    private static void all(Shoplog log, Consumer<Attempt> out) {
        Optional<Cursor> from = Optional.empty();
        boolean more = true;
        while (more) {
            Page page = log.page(from, PAGE);
            page.items().forEach(out);
            from = Optional.of(page.next());
            more = page.more();
        }
    }

    private void show(Shoplog log, PrintWriter out) {
        List<Attempt> shown = log.last(last);
        Map<String, Undone> undone = log.undone().stream().collect(Collectors.toMap(u -> u.attempt().id(), Function.identity()));
        shown.forEach(a -> {
            out.println(Texts.said(a.prepared() ? "cli.attempt" : "cli.attempt-unprepared", "at", a.at(), "shop",
                    a.shop() + a.bay().map(b -> ", " + b).orElse(""), "method", a.method(), "contaminant", a.contaminant(), "surface",
                    String.join(" + ", a.surface()), "outcome", a.outcome().word()));
            a.advised().ifPresent(m -> out.println("      " + (a.notFollowedBecause().isEmpty() ? Texts.said("cli.advised", "method", m)
                    : Texts.said("cli.not-followed", "method", m, "because",
                            String.join(", ", a.notFollowedBecause()).replace('_', ' ')))));
            a.note().ifPresent(n -> out.println(SpotText.note(n, "      ")));
            Optional.ofNullable(undone.get(a.id())).ifPresent(u -> out.println("      " + SpotText.undone(u)));
        });
        out.println(Texts.said("cli.shown", "many", shown.size(), "all", log.size(), "place", log.place()));
    }
}
