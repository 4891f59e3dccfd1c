package rungwise.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.knowledge.load.Mappers;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** Checks answers against cases. */
@Command(name = "cases", mixinStandardHelpOptions = true)
final class CasesCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "DIR", descriptionKey = "DIR")
    private Path folder;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var out = spec.commandLine().getOut();
        if (!Files.isDirectory(folder)) {
            throw InputProblem.said("no-folder-of-cases", "folder", folder);
        }
        CaseFile cases = new CaseFile(main.ready());
        int all = 0;
        int differ = 0;
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                for (JsonNode one : Mappers.yaml().readTree(Files.readString(file))) {
                    all++;
                    List<String> differences = cases.differences(one);
                    if (!differences.isEmpty()) {
                        differ++;
                        out.println(file.getFileName() + ": " + one.path("name").asString());
                        differences.forEach(d -> out.println("    " + d));
                    }
                }
            }
        }
        out.println(Texts.said("cli.cases", "all", all, "differ", differ));
        out.flush();
        return differ == 0 ? 0 : Main.FAULTS;
    }
}
