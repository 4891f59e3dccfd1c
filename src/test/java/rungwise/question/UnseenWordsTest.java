package rungwise.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;
import rungwise.names.Called;
import rungwise.names.Names;
import rungwise.names.Vocabulary;
import tools.jackson.databind.JsonNode;

/** How many everyday words that nobody wrote the vocabulary for are understood; the share may only rise. */
class UnseenWordsTest {
    private static final Vocabulary VOCABULARY = new Vocabulary(Base.advisor().knowledge());

    private static JsonNode words(String kind) throws IOException {
        return Mappers.yaml().readTree(Files.readString(Path.of("src/test/resources/words/unseen.yaml"))).path(kind);
    }

    /** What was not understood; a word that is read as something else stands first, with what it was read as. */
    private static List<String> missed(String kind, Names names) throws IOException {
        List<String> missed = new ArrayList<>();
        words(kind).properties().forEach(word -> {
            List<String> wanted = word.getValue().valueStream().map(JsonNode::asString).toList();
            Optional<String> id = names.id(word.getKey());
            assertThat(id.filter(read -> !wanted.contains(read))).as(word.getKey() + " is read as something else").isEmpty();
            if (id.isEmpty() && names.mayBe(word.getKey()).stream().map(Called::id).noneMatch(wanted::contains)) {
                missed.add(word.getKey());
            }
        });
        return missed;
    }

    @Test
    void most_deposits_are_understood_by_words_that_nobody_foresaw() throws IOException {
        List<String> missed = missed("contaminants", VOCABULARY.deposits());
        System.out.println("unseen deposits: " + missed.size() + " of " + words("contaminants").size() + " are not understood: " + missed);
        assertThat(missed).hasSizeLessThanOrEqualTo(15);
    }

    @Test
    void most_surfaces_are_understood_by_words_that_nobody_foresaw() throws IOException {
        List<String> missed = missed("surfaces", VOCABULARY.surfaces());
        System.out.println("unseen surfaces: " + missed.size() + " of " + words("surfaces").size() + " are not understood: " + missed);
        assertThat(missed).hasSizeLessThanOrEqualTo(10);
    }
}
