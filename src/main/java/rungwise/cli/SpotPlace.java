package rungwise.cli;

import java.io.PrintWriter;
import java.time.InstantSource;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rungwise.answer.Advisor;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.KnowledgeBase;
import rungwise.ladder.ChanceTable;
import rungwise.question.BadQuestion;
import rungwise.question.PlainText;
import rungwise.shoplog.BadAttempt;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Teacher;
import rungwise.spot.SpotMemory;
import rungwise.spot.UnknownSpot;
import rungwise.text.Texts;

/** Where spots are kept, and by what they are answered. */
final class SpotPlace {
    @Mixin
    private DataOption data;

    @Mixin
    private Output output;

    @Option(names = "--no-learning")
    private boolean noLearning;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    /** What a command has open while it works. */
    record Open(SpotMemory memory, Advisor advisor, String place) {
        KnowledgeBase knowledge() {
            return advisor.knowledge();
        }
    }

    /** Works where spots may be kept from now on. */
    <T> T orMake(Function<Open, T> work) {
        return in(data::openOrMake, work);
    }

    /**
     * Works where a spot must be already.
     *
     * @param wrong sentence above what is wrong in what was told
     */
    <T> T at(String id, String wrong, Function<Open, T> work) {
        return in(data::existing, open -> {
            try {
                return work.apply(open);
            } catch (UnknownSpot unknown) {
                throw InputProblem.said("no-spot", "id", unknown.id(), "place", open.place());
            } catch (BadAttempt | BadQuestion bad) {
                throw new InputProblem(Texts.said(wrong, "id", PlainText.shown(id)) + "\n  " + bad.getMessage().replace("\n", "\n  "));
            }
        });
    }

    private <T> T in(Supplier<Shoplog> opening, Function<Open, T> work) {
        CommandLine top = spec.commandLine().getParent().getParent();
        Supplier<Advisor> advising = ((Main) top.getCommand()).opening();
        try (Shoplog log = opening.get()) {
            Advisor advisor = advising.get();
            Teacher teacher = new Teacher(log, advisor.knowledge());
            Supplier<ChanceTable> chances = noLearning ? () -> ChanceTable.PRIOR : teacher::fresh;
            return work.apply(new Open(new SpotMemory(advisor, log.spots(), chances, InstantSource.system()), advisor, log.place()));
        }
    }

    /** Works where spots are kept already. */
    <T> T there(Function<Open, T> work) {
        return in(data::existing, work);
    }

    /** Prints what became of a spot: a sentence and the card, or all of it as JSON. */
    int said(Open open, Object found, SpotAnswer answer, String id, String sentence) {
        return print(found, out -> {
            out.println(sentence);
            out.println();
            card(open, answer, id);
        });
    }

    /** Prints what was found, for a person or as JSON. */
    int print(Object found, Consumer<PrintWriter> forAPerson) {
        return output.print(found, forAPerson);
    }

    /** The card of a spot, with what stands beside it. */
    void card(Open open, SpotAnswer answer, String id) {
        PrintWriter out = spec.commandLine().getOut();
        AnswerMargin.suspects(answer, out);
        Card.on(spec, open.knowledge()).ofSpot(answer.answer(), id).forEach(out::println);
        AnswerMargin.whatIf(answer, open.knowledge(), out);
    }
}
