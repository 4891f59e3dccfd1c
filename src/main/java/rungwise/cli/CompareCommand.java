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
@Command(name = "compare", mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(index = "0", paramLabel = "A", descriptionKey = "A")
    private String one;

    @Parameters(index = "1", arity = "0..1", paramLabel = "B", descriptionKey = "B")
    private String other;

    @Option(names = "--other-knowledge", paramLabel = "DIR")
    private Path knowledge;

    @Option(names = "--other-rules", paramLabel = "DIR")
    private Path rules;

    @Option(names = "--json")
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
            print(comparison, advisor, otherAdvisor, out);
        }
        out.flush();
        return 0;
    }

    private static Answer answer(String file, JsonNode tree, Advisor advisor) {
        return QuestionFile.asked(file, () -> SpotAnswer.to(advisor, new Identifier(advisor),
                QuestionReader.read(WhatIf.without(tree), advisor.knowledge()), true, false,
                ChanceTable.PRIOR)).answer();
    }

    private static void print(Comparison comparison, Advisor one, Advisor other, PrintWriter out) {
        if (comparison.isEmpty()) {
            out.println(say("none"));
        }
        comparison.asked().forEach(a -> out.println(say("asked", "field", a.field(), "one", a.one(), "other", a.other())));
        comparison.next().ifPresent(n -> out.println(say("next", "one", next(n.one(), one), "other",
                next(n.other(), other), "text", n.other().text())));
        comparison.methods().forEach(m -> {
            out.println(m.one().equals(m.other()) ? say("same", "what", m.name(), "one", m.one())
                    : say("other", "what", m.name(), "one", m.one(), "other", m.other()));
            m.figures().forEach(f -> out.println("    " + f));
            m.because().forEach(b -> out.println("    " + say(b.standsIn().equals("one") ? "no-longer" : "now", "says",
                    Texts.chosen().fill(b.because().says(), b.because().figures()), "name", b.because().name()
                            + (b.because().figures().isEmpty() ? "" : "; " + Texts.chosen().of(b.because().figures())))));
        });
        comparison.others().forEach(o -> out.println(say("other", "what", o.what(), "one", o.one(), "other", o.other())));
        out.println(say(comparison.revisionOne().equals(comparison.revisionOther()) ? "revision" : "revisions", "one",
                comparison.revisionOne(), "other", comparison.revisionOther()));
    }

    private static String say(String id, Object... named) {
        return Texts.said("compare." + id, named);
    }

    private static String next(Answer.Next next, Advisor advisor) {
        return Texts.said("action." + next.action()) + next.method().map(m -> " " + advisor.knowledge().methods().get(m).name()).orElse("");
    }
}
