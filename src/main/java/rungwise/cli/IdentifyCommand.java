package rungwise.cli;

import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.answer.Advisor;
import rungwise.diagnosis.Identification;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotReader;
import tools.jackson.databind.JsonNode;

/** Asks what a deposit is. */
@Command(name = "identify", mixinStandardHelpOptions = true)
final class IdentifyCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "FILE", descriptionKey = "FILE")
    private String file;

    @Mixin
    private Output output;

    @Override
    public Integer call() {
        Supplier<Advisor> opening = main.opening();
        JsonNode tree = QuestionFile.read(file);
        Advisor advisor = opening.get();
        Identification found = QuestionFile.asked(file,
                () -> new Identifier(advisor).identify(SpotReader.read(tree, advisor.knowledge())));
        return output.print(found, out -> IdentificationText.print(found, advisor.knowledge(), out));
    }
}
