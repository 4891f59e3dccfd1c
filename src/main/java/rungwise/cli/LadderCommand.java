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
import tools.jackson.databind.JsonNode;

/** Asks for a ladder. */
@Command(name = "ladder", mixinStandardHelpOptions = true)
final class LadderCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "FILE", descriptionKey = "FILE")
    private String file;

    @Option(names = "--json")
    private boolean json;

    @Option(names = "--all")
    private boolean all;

    @Option(names = "--why", paramLabel = "METHOD")
    private String why;

    @Option(names = "--data", paramLabel = "DIR")
    private String data;

    @Option(names = "--no-learning")
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
                QuestionReader.read(WhatIf.without(tree), advisor.knowledge()), why != null, WhatIf.isAsked(tree), data == null || noLearning ? ChanceTable.PRIOR : DataOption.learned(data, advisor.knowledge())));
        if (json) {
            out.println(Mappers.json().writeValueAsString(answer));
        } else if (why != null) {
            new AnswerText(advisor.knowledge(), out).why(answer.answer(), why);
        } else {
            AnswerMargin.surfaces(tree, answer, advisor.knowledge(), out);
            AnswerMargin.suspects(answer, out);
            if (all) {
                new AnswerText(advisor.knowledge(), out).print(answer.answer());
            } else {
                Card.on(spec, advisor.knowledge()).lines(answer.answer(), file).forEach(out::println);
            }
            AnswerMargin.whatIf(answer, advisor.knowledge(), out);
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
}
