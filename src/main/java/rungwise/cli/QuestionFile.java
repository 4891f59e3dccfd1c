package rungwise.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import rungwise.knowledge.load.Mappers;
import rungwise.question.BadQuestion;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/** A question in a file or on standard input. */
final class QuestionFile {
    private static final int LARGEST = 1_000_000;

    private QuestionFile() {
    }

    /**
     * The parsed file.
     *
     * @param file a path, or - for standard input
     */
    static JsonNode read(String file) {
        try {
            byte[] bytes = file.equals("-") ? System.in.readNBytes(LARGEST + 1) : limited(Path.of(file));
            if (bytes.length > LARGEST) {
                throw InputProblem.said("question-too-large");
            }
            return Mappers.question().readTree(new String(bytes, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw InputProblem.said("file-unreadable", "file", file);
        } catch (JacksonException e) {
            throw InputProblem.unreadable(Texts.said("cli.question-in", "file", file), e);
        } catch (InputProblem known) {
            throw known;
        } catch (RuntimeException e) {
            // the YAML engine gives up on absurd nesting with an exception of its own
            throw InputProblem.said("unparsable", "file", file);
        }
    }

    /** Turns a question that cannot be answered into a message for the command line. */
    static <T> T asked(String file, Supplier<T> ask) {
        try {
            return ask.get();
        } catch (BadQuestion bad) {
            throw new InputProblem(Texts.said("cli.unanswerable", "file", file) + "\n  "
                    + bad.getMessage().replace("\n", "\n  "));
        }
    }

    private static byte[] limited(Path path) throws IOException {
        try (var in = Files.newInputStream(path)) {
            return in.readNBytes(LARGEST + 1);
        }
    }
}
