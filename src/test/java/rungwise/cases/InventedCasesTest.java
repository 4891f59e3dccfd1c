package rungwise.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.cli.CaseFile;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.load.KnowledgeLoader;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

/**
 * Cases about invented agents, tools, methods and surfaces: whatever somebody adds tomorrow is caught by its properties,
 * though today's entries are each caught twice.
 */
class InventedCasesTest {
    private static final Path FOLDER = Path.of("src/test/resources/invented");

    static List<JsonNode> cases() throws IOException {
        List<JsonNode> all = new ArrayList<>();
        Mappers.yaml().readTree(Files.readString(FOLDER.resolve("cases.yaml"))).forEach(all::add);
        return all;
    }

    /** Everything that is known, and the invented things beside it. */
    static KnowledgeBase known() {
        Map<String, String> files = new TreeMap<>(KnowledgeFiles.builtIn("knowledge"));
        files.putAll(KnowledgeFiles.yamlIn(FOLDER.resolve("knowledge")));
        KnowledgeLoader.Loaded loaded = KnowledgeLoader.load(files, "invented");
        assertThat(loaded.faults()).isEmpty();
        return loaded.base().orElseThrow();
    }

    @Test
    void every_source_that_a_case_names_is_known() throws IOException {
        assertThat(cases()).isNotEmpty().allSatisfy(c -> assertThat(List.of(c.path("source").asString().split(", ")))
                .allMatch(s -> s.equals("common-practice") || Base.advisor().knowledge().sources().containsKey(s)));
    }

    @TestFactory
    Stream<DynamicTest> every_invented_thing_meets_what_its_properties_ask_for() throws IOException {
        CaseFile file = new CaseFile(new Advisor(known(), Base.advisor().rules()));
        return cases().stream().map(one -> DynamicTest.dynamicTest(one.path("name").asString(),
                () -> assertThat(file.differences(one)).isEmpty()));
    }
}
