package rungwise.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.deposit.Contaminant;
import rungwise.knowledge.method.Method;
import rungwise.knowledge.surface.Surface;
import tools.jackson.databind.JsonNode;

/** Everyday words for what is known: every entry has some, and none of them could be taken for another entry of its kind. */
class WordsTest {
    private static final JsonNode WORDS = Trade.map(Path.of("src/test/resources/first-steps"), "words.yaml");

    private final KnowledgeBase base = Base.advisor().knowledge();

    @TestFactory
    Stream<DynamicTest> every_entry_has_words_of_its_own() {
        return kinds().entrySet().stream().map(kind -> DynamicTest.dynamicTest(kind.getKey(), () -> {
            JsonNode words = WORDS.path(kind.getKey());
            assertThat(words.propertyNames()).containsExactlyInAnyOrderElementsOf(kind.getValue().keySet());
            Map<String, String> stands = new TreeMap<>();
            kind.getValue().forEach((id, name) -> stands.put(name.toLowerCase(Locale.ROOT), id));
            words.properties().forEach(entry -> {
                List<String> own = Trade.names(entry.getValue());
                assertThat(own).as(entry.getKey()).hasSizeBetween(2, 6);
                own.forEach(word -> assertThat(stands.merge(word.toLowerCase(Locale.ROOT), entry.getKey(),
                        (one, other) -> one)).as(word).isEqualTo(entry.getKey()));
            });
            WORDS.path("ambiguous").path(kind.getKey()).properties().forEach(entry -> {
                List<String> several = Trade.names(entry.getValue());
                assertThat(stands).as("it stands for one already").doesNotContainKey(entry.getKey().toLowerCase(Locale.ROOT));
                assertThat(kind.getValue().keySet()).as(entry.getKey()).containsAll(several);
                assertThat(several).as(entry.getKey()).doesNotHaveDuplicates().hasSizeGreaterThan(1);
            });
        }));
    }

    private Map<String, Map<String, String>> kinds() {
        return Map.of("contaminants", names(base.contaminants(), Contaminant::name),
                "surfaces", names(base.surfaces(), Surface::name), "methods", names(base.methods(), Method::name));
    }

    private static <T> Map<String, String> names(Map<String, T> entries, Function<T, String> name) {
        return entries.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, e -> name.apply(e.getValue())));
    }
}
