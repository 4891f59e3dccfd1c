package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.text.Texts;

/** What is printed beside an answer: before it what the deposit may be, after it what would change the next step. */
final class AnswerMargin {
    private AnswerMargin() {
    }

    static void suspects(SpotAnswer answer, PrintWriter out) {
        answer.suspects().ifPresent(s -> {
            out.println(Texts.said("cli.by-its-signs"));
            IdentificationText.suspects(s, out);
            out.println();
        });
    }

    static void whatIf(SpotAnswer answer, KnowledgeBase base, PrintWriter out) {
        answer.whatIf().orElse(List.of()).forEach(w -> out.println(Texts.said("cli.what-if", "fact", w.fact(), "value",
                w.value(), "next", Texts.said("action." + w.next().action()) + w.next().method().map(m -> " " + base.methods().get(m).name()).orElse(""))));
    }
}
