package rungwise.cli;

import java.io.PrintWriter;
import java.util.function.Consumer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rungwise.knowledge.load.Mappers;

/** What a command found, for a person or as JSON. */
final class Output {
    @Option(names = "--json")
    private boolean json;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    /** Prints it, and ends the command well. */
    int print(Object found, Consumer<PrintWriter> forAPerson) {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Mappers.json().writeValueAsString(found));
        } else {
            forAPerson.accept(out);
        }
        out.flush();
        return 0;
    }
}
