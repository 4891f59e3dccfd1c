package rungwise.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.answer.Advisor;
import rungwise.compare.WhatIf;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import rungwise.question.Named;
import rungwise.question.Problem;
import rungwise.question.QuestionReader;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Teacher;
import tools.jackson.databind.JsonNode;

/** Asks for a ladder. */
@Command(name = "ladder", mixinStandardHelpOptions = true, description = "Answer a spot: what to try next, and why.")
final class LadderCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "FILE", description = "a question in YAML or JSON; - reads standard input")
    private String file;

    @Option(names = "--json", description = "print the whole answer as JSON")
    private boolean json;

    @Option(names = "--all", description = "print also what surrounds the steps, what is left out and why, and what was assumed")
    private boolean all;

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
        Supplier<Advisor> opening = main.opening();
        JsonNode tree = QuestionFile.read(file);
        Advisor advisor = opening.get();
        if (why != null) {
            why = method(advisor, why);
        }
        SpotAnswer answer = QuestionFile.asked(file, () -> SpotAnswer.to(advisor, new Identifier(advisor),
                QuestionReader.read(WhatIf.without(tree), advisor.knowledge()), why != null, WhatIf.isAsked(tree), chances(advisor)));
        if (json) {
            out.println(Mappers.json().writeValueAsString(answer));
        } else if (why != null) {
            new AnswerText(advisor.knowledge(), out).why(answer.answer(), why);
        } else {
            Beside.suspects(answer, out);
            if (all) {
                new AnswerText(advisor.knowledge(), out).print(answer.answer());
            } else {
                new Card(advisor.knowledge(), Terminal.width(spec), Terminal.isPlain()).lines(answer.answer(), file).forEach(out::println);
            }
            Beside.whatIf(answer, advisor.knowledge(), out);
        }
        out.flush();
        return 0;
    }

    /** The id of a method as somebody calls it. */
    static String method(Advisor advisor, String word) {
        List<Problem> problems = new ArrayList<>();
        String method = new Named(advisor.knowledge()).method("--why", word, problems);
        if (!problems.isEmpty()) {
            throw new InputProblem(problems.get(0).toString());
        }
        return method;
    }

    private ChanceTable chances(Advisor advisor) {
        if (data == null || noLearning) {
            return ChanceTable.PRIOR;
        }
        if (!Shoplog.exists(data)) {
            throw InputProblem.said("no-log-to-learn-from", "place", data);
        }
        try (Shoplog log = Shoplog.open(data)) {
            Teacher teacher = new Teacher(log, advisor.knowledge());
            teacher.refresh();
            return teacher.table();
        }
    }
}
