package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

/** An age as people say it. */
class PlainAgesTest {
    private static JsonNode cases() throws IOException {
        return Mappers.yaml().readTree(Files.readString(Path.of("src/test/resources/words/durations.yaml")));
    }

    private static Question asked(String age) {
        return QuestionReader.read(Mappers.json().createObjectNode().put("age", age), Base.advisor().knowledge());
    }

    @TestFactory
    Stream<DynamicTest> an_age_is_read_as_a_duration() throws IOException {
        return cases().path("read").properties().stream().map(pair -> DynamicTest.dynamicTest(pair.getKey(),
                () -> assertThat(asked(pair.getKey()).age()).isEqualTo(pair.getValue().asString())));
    }

    @TestFactory
    Stream<DynamicTest> what_says_no_age_is_refused_with_examples() throws IOException {
        return cases().path("refused").valueStream().map(said -> DynamicTest.dynamicTest(said.asString(),
                () -> assertThatThrownBy(() -> asked(said.asString())).isInstanceOf(BadQuestion.class).hasMessage("/age: \"" + said.asString()
                        + "\" says no age; write 12 days, 3 weeks, 2 h, an hour, yesterday or P12D; or unknown")));
    }
}
