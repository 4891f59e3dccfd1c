package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.surface.Surface;
import rungwise.question.PlainText;
import rungwise.text.Texts;
import tools.jackson.databind.JsonNode;

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

    /** What a place was taken for, where a question says no more of what it is on. */
    static void surfaces(JsonNode asked, SpotAnswer answer, KnowledgeBase base, PrintWriter out) {
        List<String> taken = answer.answer().question().surface();
        if (asked.path("surface").isString() && taken.size() > 1) {
            out.println(Texts.said("cli.taken-together", "said", PlainText.shown(asked.path("surface").asString()), "surfaces",
                    taken.stream().map(base.surfaces()::get).map(Surface::name).collect(Collectors.joining(", "))));
            out.println();
        }
    }

    static void whatIf(SpotAnswer answer, KnowledgeBase base, PrintWriter out) {
        answer.whatIf().orElse(List.of()).forEach(w -> out.println(Texts.said("cli.what-if", "fact", w.fact(), "value",
                w.value(), "next", Texts.said("action." + w.next().action()) + w.next().method().map(m -> " " + base.methods().get(m).name()).orElse(""))));
    }
}
