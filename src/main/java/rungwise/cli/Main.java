package rungwise.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import rungwise.answer.Advisor;
import rungwise.knowledge.draft.Fault;
import rungwise.question.PlainText;
import rungwise.shoplog.LogFailure;
import rungwise.start.Opened;
import rungwise.text.Texts;

/** The program. */
@Command(name = "rungwise", mixinStandardHelpOptions = true, version = "rungwise 0.1.0",
        subcommands = {AskCommand.class, LadderCommand.class, IdentifyCommand.class, CompareCommand.class, CheckCommand.class,
                CasesCommand.class, ServeCommand.class, LogCommand.class, LearnedCommand.class,
                BookCommand.class, FindCommand.class, ListCommand.class, SpotCommand.class})
public final class Main implements Runnable {
    static final int FAULTS = 1;
    static final int BAD_INPUT = 2;

    @Option(names = "--knowledge", paramLabel = "DIR", scope = ScopeType.INHERIT)
    private Path knowledge;

    @Option(names = "--rules", paramLabel = "DIR", scope = ScopeType.INHERIT)
    private Path rules;

    @Option(names = "--overlay", paramLabel = "DIR", scope = ScopeType.INHERIT)
    private Path overlay;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    public static void main(String[] args) {
        System.setProperty("org.slf4j.simpleLogger.defaultLogLevel",
                System.getProperty("org.slf4j.simpleLogger.defaultLogLevel", "warn"));
        try {
            Texts.choose(Optional.ofNullable(System.getenv("RUNGWISE_LANG")), Locale.getDefault());
        } catch (IllegalArgumentException e) {
            System.err.println(e.getMessage());
            System.exit(BAD_INPUT);
        }
        System.exit(run(args));
    }

    /** Runs a command line and gives its exit code. */
    public static int run(String... args) {
        return commandLine().execute(args);
    }

    static CommandLine commandLine() {
        return new CommandLine(new Main()).setResourceBundle(new HelpTexts(Texts.chosen())).setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((problem, line, parsed) -> {
                    line.getErr().println(PlainText.lines(String.valueOf(problem.getMessage())));
                    return isInput(problem) ? BAD_INPUT : FAULTS;
                })
                .setParameterExceptionHandler((problem, arguments) -> {
                    CommandLine line = problem.getCommandLine();
                    line.getErr().println(PlainText.lines(String.valueOf(problem.getMessage())));
                    if (!CommandLine.UnmatchedArgumentException.printSuggestions(problem, line.getErr())) {
                        line.usage(line.getErr());
                    }
                    return BAD_INPUT;
                });
    }

    /** A place that can hold no log was named wrongly; a log that is there and fails was not. */
    private static boolean isInput(Exception problem) {
        return problem instanceof InputProblem || problem instanceof LogFailure log && log.why() == LogFailure.Cause.NO_PLACE;
    }

    Opened open() {
        return open(knowledge, rules);
    }

    /** The same, begun now beside whatever the command does until it asks for it. */
    Supplier<Advisor> opening() {
        FutureTask<Advisor> opening = new FutureTask<>(this::ready);
        Thread thread = new Thread(opening, "opening");
        thread.setDaemon(true);
        thread.start();
        return () -> {
            try {
                return opening.get();
            } catch (ExecutionException e) {
                throw e.getCause() instanceof RuntimeException problem ? problem : new IllegalStateException(e.getCause());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("interrupted while knowledge and rules were opened", e);
            }
        };
    }

    /** To answer with: an overlay at fault is wrong input, knowledge at fault is not. */
    Advisor ready() {
        Opened opened = Opened.ready(folder(knowledge), folder(rules), folder(overlay));
        boolean overlaid = overlay != null && !opened.faults().isEmpty()
                && opened.faults().stream().allMatch(f -> f.file().startsWith(overlay.toString()));
        if (overlaid) {
            throw new InputProblem(String.join("\n", opened.faults().stream().map(Fault::toString).toList()));
        }
        return opened.orElseThrow();
    }

    /** Opens folders in place of what the program carries; null = what it carries. */
    Opened open(Path knowledge, Path rules) {
        return Opened.from(folder(knowledge), folder(rules), folder(overlay));
    }

    private static Optional<Path> folder(Path folder) {
        if (folder != null && !java.nio.file.Files.isDirectory(folder)) {
            throw InputProblem.said("no-folder", "folder", folder);
        }
        return Optional.ofNullable(folder);
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
