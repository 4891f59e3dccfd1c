package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine;
import rungwise.shoplog.Attempt;
import rungwise.shoplog.Cursor;
import rungwise.shoplog.Exchange;
import rungwise.shoplog.Page;
import rungwise.shoplog.Shoplog;

/** Shows attempts. */
@Command(name = "log", mixinStandardHelpOptions = true, subcommands = LogAddCommand.class,
        description = "Show the last attempts, or write the whole log out as JSON Lines or CSV.")
final class LogCommand implements Callable<Integer> {
    private static final int PAGE = 1_000;

    @Mixin
    private DataOption data;

    @ArgGroup
    private Form form;

    @Option(names = "--last", paramLabel = "N", defaultValue = "20",
            description = "how many attempts to show (${DEFAULT-VALUE})")
    private int last;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    private static final class Form {
        @Option(names = "--json", description = "the whole log as JSON Lines")
        private boolean json;

        @Option(names = "--csv", description = "the whole log as CSV")
        private boolean csv;
    }

    @Override
    public Integer call() {
        if (last < 1 || last > 10_000) {
            throw new InputProblem("--last: " + last + " is out of range; give a number from 1 to 10000");
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
        shown.forEach(a -> {
            out.println(a.at() + "  " + a.shop() + a.bay().map(b -> ", " + b).orElse("") + "  " + a.method() + " on "
                    + a.contaminant() + ", " + String.join(" + ", a.surface()) + ": " + a.outcome().word()
                    + (a.prepared() ? "" : " (panel not prepared)"));
            a.advised().ifPresent(m -> out.println("      advised was " + m + (a.notFollowedBecause().isEmpty() ? ""
                    : "; not followed: " + String.join(", ", a.notFollowedBecause()).replace('_', ' '))));
            a.note().ifPresent(n -> out.println("      " + n.replace("\n", "\n      ")));
        });
        out.println(shown.size() + " of " + log.size() + " attempts in " + log.place() + ".");
    }
}
