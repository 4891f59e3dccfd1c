package rungwise.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.answer.Advisor;
import rungwise.book.Book;
import rungwise.book.BookFolder;
import rungwise.book.FolderTaken;
import rungwise.book.RuleCases;
import rungwise.text.Texts;

/** Writes the rule book. */
@Command(name = "book", mixinStandardHelpOptions = true)
final class BookCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "DIR", descriptionKey = "DIR")
    private Path folder;

    @Option(names = "--cases", paramLabel = "DIR")
    private Optional<Path> cases = Optional.empty();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        BookFolder target = new BookFolder(folder);
        try {
            target.check();
        } catch (FolderTaken taken) {
            throw new InputProblem(taken.getMessage());
        }
        if (cases.isPresent() && !Files.isDirectory(cases.get())) {
            throw InputProblem.said("no-folder-of-cases", "folder", cases.get());
        }
        Advisor advisor = main.open().orElseThrow();
        Optional<RuleCases> answered = cases.isPresent() ? Optional.of(RuleCases.of(cases.get(), advisor))
                : Optional.empty();
        Map<String, String> texts = new Book(advisor, answered).texts();
        target.write(texts);
        var out = spec.commandLine().getOut();
        out.println(Texts.said("cli.book", "many", texts.keySet().stream().filter(p -> p.endsWith(".html")).count(),
                "revision", advisor.knowledge().revision(), "index", folder.resolve("index.html")));
        out.flush();
        return 0;
    }
}
