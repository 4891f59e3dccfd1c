package rungwise.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.knowledge.Mappers;
import rungwise.knowledge.Near;
import rungwise.ladder.Advisor;
import rungwise.ladder.Answer;
import rungwise.ladder.BadQuestion;
import rungwise.ladder.ChanceTable;
import rungwise.ladder.QuestionReader;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Teacher;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/** Asks for a ladder. */
@Command(name = "ladder", mixinStandardHelpOptions = true, description = "Answer a spot: what to try next, and why.")
final class LadderCommand implements Callable<Integer> {
    private static final int LARGEST = 1_000_000;

    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "FILE", description = "a question in YAML or JSON; - reads standard input")
    private String file;

    @Option(names = "--json", description = "print the whole answer as JSON")
    private boolean json;

    @Option(names = "--why", paramLabel = "METHOD", description = "say where this method went, and why")
    private String why;

    @Option(names = "--data", paramLabel = "DIR", description = "use what the log in this folder has taught, or in "
            + "jdbc:postgresql://host/name")
    private String data;

    @Option(names = "--no-learning", description = "answer with priors, whatever the log says")
    private boolean noLearning;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        JsonNode tree = read();
        Advisor advisor = main.open().orElseThrow();
        if (why != null && !advisor.knowledge().methods().containsKey(why)) {
            throw new InputProblem("--why: \"" + why + "\" is not a known method; "
                    + Near.to(why, advisor.knowledge().methods().keySet()));
        }
        Answer answer;
        try {
            answer = advisor.answer(QuestionReader.read(tree, advisor.knowledge()), why != null,
                    chances(advisor));
        } catch (BadQuestion bad) {
            throw new InputProblem("The question in " + file + " cannot be answered:\n  "
                    + bad.getMessage().replace("\n", "\n  "));
        }
        if (json) {
            out.println(Mappers.json().writeValueAsString(answer));
        } else if (why != null) {
            new AnswerText(advisor.knowledge(), out).why(answer, why);
        } else {
            new AnswerText(advisor.knowledge(), out).print(answer);
        }
        out.flush();
        return 0;
    }

    private ChanceTable chances(Advisor advisor) {
        if (data == null || noLearning) {
            return ChanceTable.PRIOR;
        }
        if (!Shoplog.exists(data)) {
            throw new InputProblem("--data: there is no log in " + data + "; name its folder, or leave --data out to "
                    + "answer with priors");
        }
        try (Shoplog log = Shoplog.open(data)) {
            Teacher teacher = new Teacher(log, advisor.knowledge());
            teacher.refresh();
            return teacher.table();
        }
    }

    private JsonNode read() {
        try {
            byte[] bytes = file.equals("-") ? System.in.readNBytes(LARGEST + 1) : limited(Path.of(file));
            if (bytes.length > LARGEST) {
                throw new InputProblem("the question is larger than 1 MB; a question is a page at most");
            }
            return Mappers.question().readTree(new String(bytes, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new InputProblem("the file " + file + " cannot be read; check its name, or give - and send it on "
                    + "standard input");
        } catch (JacksonException e) {
            throw new InputProblem("the question in " + file + " is not readable YAML or JSON"
                    + (e.getLocation() == null ? "" : " at line " + e.getLocation().getLineNr()) + ": " + e.getOriginalMessage().lines().findFirst().orElse("")
                    + "; mend that line or the one above it");
        } catch (InputProblem known) {
            throw known;
        } catch (RuntimeException e) {
            // the YAML engine gives up on absurd nesting with an exception of its own
            throw new InputProblem("the question in " + file + " cannot be parsed: "
                    + String.valueOf(e.getMessage()).lines().findFirst().orElse("") + "; write it as in demo-data/spots");
        }
    }

    private static byte[] limited(Path path) throws IOException {
        try (var in = Files.newInputStream(path)) {
            return in.readNBytes(LARGEST + 1);
        }
    }
}
