package rungwise.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.answer.Advisor;
import rungwise.diagnosis.Identification;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotReader;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

/** Asks what a deposit is. */
@Command(name = "identify", mixinStandardHelpOptions = true,
        description = "Say what a deposit may be by its signs, and which harmless check to make next.")
final class IdentifyCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "FILE", description = "signs in YAML or JSON; - reads standard input")
    private String file;

    @Option(names = "--json", description = "print the whole answer as JSON")
    private boolean json;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Supplier<Advisor> opening = main.opening();
        JsonNode tree = QuestionFile.read(file);
        Advisor advisor = opening.get();
        Identification found = QuestionFile.asked(file,
                () -> new Identifier(advisor).identify(SpotReader.read(tree, advisor.knowledge())));
        if (json) {
            out.println(Mappers.json().writeValueAsString(found));
        } else {
            IdentificationText.print(found, out);
        }
        out.flush();
        return 0;
    }
}
