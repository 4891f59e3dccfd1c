package rungwise.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import rungwise.answer.Advisor;
import rungwise.ask.Conversation;
import rungwise.ask.Told;
import rungwise.diagnosis.Identifier;
import rungwise.diagnosis.SpotAnswer;
import rungwise.knowledge.load.Mappers;
import rungwise.ladder.ChanceTable;
import rungwise.question.QuestionReader;
import rungwise.text.Texts;

/** Asks a person at the vehicle. */
@Command(name = "ask", mixinStandardHelpOptions = true)
final class AskCommand implements Callable<Integer> {
    private static final String LAST = "-";

    @ParentCommand
    private Main main;

    @Option(names = "--data", paramLabel = "DIR")
    private String data;

    @Option(names = "--save", paramLabel = "FILE")
    private String save;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        Supplier<Advisor> opening = main.opening();
        PrintWriter out = spec.commandLine().getOut();
        checkFolder();
        boolean typed = System.console() != null;
        LineVoice voice = new LineVoice(new BufferedReader(new InputStreamReader(System.in, typed ? nativeLetters() : StandardCharsets.UTF_8)), out,
                new Page(Terminal.width(spec), Terminal.isPlain()), typed);
        Advisor advisor = opening.get();
        ChanceTable chances = data == null ? ChanceTable.PRIOR : DataOption.learned(data, advisor.knowledge());
        voice.say(Texts.said("ask.begins"));
        Told told = new Conversation(advisor, chances, voice).talk();
        out.println();
        SpotAnswer answer = SpotAnswer.to(advisor, new Identifier(advisor), QuestionReader.read(told.tree(), advisor.knowledge()), false, false,
                chances);
        AnswerMargin.suspects(answer, out);
        Card.on(spec, advisor.knowledge()).lines(answer.answer(), save == null || save.equals(LAST)
                ? Texts.said("ask.file") : save).forEach(out::println);
        keep(Mappers.json().writeValueAsString(told.tree()), out);
        out.flush();
        return 0;
    }

    private static Charset nativeLetters() {
        String encoding = System.getProperty("native.encoding");
        return encoding != null && Charset.isSupported(encoding) ? Charset.forName(encoding) : StandardCharsets.UTF_8;
    }

    /** Before anybody answers eight questions for nothing. */
    private void checkFolder() {
        if (save != null && save.isBlank()) {
            throw InputProblem.said("saved-nowhere");
        }
        if (save != null && !save.equals(LAST)) {
            try {
                Path file = Path.of(save).toAbsolutePath();
                if (Files.exists(file) && !Files.isDirectory(file)) {
                    throw InputProblem.said("not-written-over", "file", save);
                }
                if (!Files.isDirectory(file) && Files.isDirectory(file.getParent())) {
                    return;
                }
            } catch (InvalidPathException e) {
                // said below, as any other name that cannot be written
            }
            throw InputProblem.said("not-written", "file", save);
        }
    }

    private void keep(String question, PrintWriter out) {
        if (save == null) {
            return;
        }
        if (save.equals(LAST)) {
            out.println(question);
            return;
        }
        try {
            Files.writeString(Path.of(save), question + "\n");
        } catch (IOException e) {
            out.flush();
            throw InputProblem.said("not-written", "file", save);
        }
    }
}
