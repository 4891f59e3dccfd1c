package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;
import rungwise.question.QuestionReader;

/** What README shows is what the program prints. */
class ReadmeTest {
    private static final Path SPOT = Path.of("demo-data/spots/tar-on-sound-clear.yaml");

    private static List<String> shown() throws Exception {
        List<String> blocks = new ArrayList<>();
        Matcher matcher = Pattern.compile("(?s)```text\n(.*?)\n```").matcher(Files.readString(Path.of("README.md")));
        while (matcher.find()) {
            blocks.add(matcher.group(1));
        }
        return blocks;
    }

    private static String printed() throws Exception {
        var advisor = Base.advisor();
        var question = QuestionReader.read(Mappers.question().readTree(Files.readString(SPOT)), advisor.knowledge());
        return String.join("\n", new Card(advisor.knowledge(), 78, false).lines(advisor.answer(question), SPOT.toString())).stripTrailing();
    }

    @Test
    void the_ladder_in_readme_is_the_ladder_that_is_printed() throws Exception {
        assertThat(printed()).isEqualTo(shown().get(0));
    }
}
