package rungwise.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Spots that are worked on. */
@Command(name = "spot", mixinStandardHelpOptions = true,
        subcommands = {SpotNewCommand.class, SpotTryCommand.class, SpotTellCommand.class, SpotShowCommand.class,
            SpotUndoCommand.class, SpotListCommand.class})
final class SpotCommand implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
