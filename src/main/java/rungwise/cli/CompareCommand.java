package rungwise.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.compare.Comparison;
import rungwise.compare.Differences;
import rungwise.compare.WhatIf;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import rungwise.question.Named;
import rungwise.question.QuestionReader;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

/** Two answers side by side. */
@Command(name = "compare", mixinStandardHelpOptions = true, description = "Show only what differs between two "
        + "answers, and which rule or figure made the difference.")
final class CompareCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(index = "0", paramLabel = "A", description = "a question in YAML or JSON; - reads standard input")
    private String one;

    @Parameters(index = "1", arity = "0..1", paramLabel = "B", description = "another; left out = the same question")
    private String other;

    @Option(names = "--other-knowledge", paramLabel = "DIR", description = "answer B from this knowledge")
    private Path knowledge;

    @Option(names = "--other-rules", paramLabel = "DIR", description = "answer B by these rules")
    private Path rules;

    @Option(names = "--json", description = "print the comparison as JSON")
    private boolean json;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        JsonNode first = QuestionFile.read(one);
        JsonNode second = other == null ? first : QuestionFile.read(other);
        Advisor advisor = main.ready();
        Advisor otherAdvisor = knowledge == null && rules == null ? advisor : main.open(knowledge, rules).orElseThrow();
        Comparison comparison = Comparison.of(answer(one, first, advisor), answer(other == null ? one : other, second,
                otherAdvisor), Differences.between(
                Named.inIds(first, advisor.knowledge()), Named.inIds(second, otherAdvisor.knowledge())));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Mappers.json().writeValueAsString(comparison));
        } else {
            print(comparison, out);
        }
        out.flush();
        return 0;
    }

    private static Answer answer(String file, JsonNode tree, Advisor advisor) {
        return QuestionFile.asked(file, () -> SpotAnswer.to(advisor, new Identifier(advisor),
                QuestionReader.read(WhatIf.without(tree), advisor.knowledge()), true, false,
                ChanceTable.PRIOR)).answer();
    }

    private static void print(Comparison comparison, PrintWriter out) {
        if (comparison.isEmpty()) {
            out.println("Nothing differs.");
        }
        comparison.asked().forEach(a -> out.println("asked " + a.field() + ": " + a.one() + " → " + a.other()));
        comparison.next().ifPresent(n -> out.println("next: " + n.one().action() + n.one().method().map(m -> " " + m)
                .orElse("") + " → " + n.other().action() + n.other().method().map(m -> " " + m).orElse("") + ". "
                + n.other().text()));
        comparison.methods().forEach(m -> {
            out.println(m.name() + ": " + (m.one().equals(m.other()) ? m.one() : m.one() + " → " + m.other()));
            m.figures().forEach(f -> out.println("    " + f));
            m.because().forEach(b -> out.println("    " + (b.standsIn().equals("one") ? "no longer: " : "now: ")
                    + b.because().says() + " (" + b.because().name() + "; " + Texts.ENGLISH.of(b.because().figures())
                    + ")"));
        });
        comparison.others().forEach(o -> out.println(o.what() + ": " + o.one() + " → " + o.other()));
        out.println("Revision " + comparison.revisionOne() + (comparison.revisionOne().equals(
                comparison.revisionOther()) ? "." : " → " + comparison.revisionOther() + "."));
    }
}
