package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.question.ClosedLists;
import rungwise.question.Question;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the description says of a question is what its reader takes. */
class QuestionSchemaTest {
    private static final JsonNode QUESTION = schema();

    private static JsonNode schema() {
        try {
            return new JsonMapper().readTree(Files.readString(Path.of("src/main/resources/openapi.json")))
                    .at("/components/schemas/Question");
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void the_words_of_every_closed_list_are_those_of_the_knowledge() {
        ClosedLists lists = new ClosedLists(Base.advisor().knowledge());
        assertThat(lists.fields()).hasSizeGreaterThanOrEqualTo(10).allSatisfy(pointer -> {
            Set<String> described = new TreeSet<>();
            field(pointer).path("enum").forEach(word -> described.add(word.asString()));
            assertThat(described).as(pointer).isEqualTo(new TreeSet<>(lists.words(pointer)));
        });
    }

    @Test
    void no_other_field_of_a_question_has_words_of_its_own() {
        assertThat(QUESTION.findValues("enum")).hasSize(new ClosedLists(Base.advisor().knowledge()).fields().size());
    }

    @Test
    void every_field_is_described() {
        Set<String> fields = Arrays.stream(Question.class.getRecordComponents()).map(c -> c.getName())
                .collect(Collectors.toCollection(TreeSet::new));
        // read before the question itself
        fields.add("whatIf");
        assertThat(new TreeSet<>(QUESTION.path("properties").propertyNames())).isEqualTo(fields);
    }

    private static JsonNode field(String pointer) {
        JsonNode at = QUESTION;
        for (String step : pointer.substring(1).split("/")) {
            at = step.equals("*") ? at.path("items") : at.path("properties").path(step);
        }
        return at;
    }
}
