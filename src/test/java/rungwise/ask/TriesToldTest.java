package rungwise.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;
import rungwise.names.Vocabulary;
import tools.jackson.databind.JsonNode;

/** What was tried, as it is told at the counter. */
class TriesToldTest {
    private static final TriesTold TOLD = new TriesTold(new Vocabulary(Base.advisor().knowledge()));

    private static JsonNode cases() throws IOException {
        return Mappers.yaml().readTree(Files.readString(Path.of("src/test/resources/words/tries.yaml")));
    }

    @TestFactory
    Stream<DynamicTest> a_try_is_heard_with_what_it_did() throws IOException {
        return cases().path("heard").properties().stream().map(said -> DynamicTest.dynamicTest(said.getKey(), () -> {
            List<String> tries = new ArrayList<>();
            TOLD.in(said.getKey()).tries().forEach(one -> tries.add(one.text() + " = " + one.outcome().orElse("not said")));
            assertThat(tries).containsExactlyElementsOf(said.getValue().path("tries").valueStream().map(JsonNode::asString).toList());
            assertThat(TOLD.in(said.getKey()).rest()).isEqualTo(said.getValue().path("rest").asString());
        }));
    }

    @TestFactory
    Stream<DynamicTest> what_tells_of_no_try_is_left_as_it_is() throws IOException {
        return cases().path("no-try").valueStream().map(JsonNode::asString).map(said -> DynamicTest.dynamicTest(said,
                () -> assertThat(TOLD.in(said)).isEqualTo(new TriesTold.Heard(List.of(), false, said))));
    }

    @TestFactory
    Stream<DynamicTest> that_nothing_was_tried_is_heard_too() throws IOException {
        return cases().path("nothing-tried").valueStream().map(JsonNode::asString).map(said -> DynamicTest.dynamicTest(said,
                () -> assertThat(TOLD.in(said)).matches(TriesTold.Heard::none).extracting(TriesTold.Heard::tries).isEqualTo(List.of())));
    }
}
