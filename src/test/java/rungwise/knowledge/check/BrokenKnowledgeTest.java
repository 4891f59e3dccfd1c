package rungwise.knowledge.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rungwise.Tiny;
import rungwise.knowledge.draft.Draft;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.load.KnowledgeLoader;

/**
 * A tiny base, broken in one way per folder. A folder holds the files that differ and {@code expected.txt}: how each
 * fault begins, one a line. A fault that is not expected fails too, so that one mistake is told once.
 */
class BrokenKnowledgeTest {
    private static final Path BROKEN = Tiny.BROKEN;
    private static final Map<String, String> VALID = Tiny.files();

    static Stream<String> broken() {
        Set<String> folders = new TreeSet<>();
        KnowledgeFiles.inFolder(BROKEN).keySet().forEach(f -> folders.add(f.substring(0, f.indexOf('/'))));
        folders.remove("_valid");
        return folders.stream();
    }

    private static KnowledgeLoader.Loaded load(Map<String, String> files) {
        return KnowledgeLoader.load(files, "test", Set.of());
    }

    private static KnowledgeLoader.Loaded loadBroken(String folder) {
        Map<String, String> files = new TreeMap<>(VALID);
        files.putAll(KnowledgeFiles.inFolder(BROKEN.resolve(folder)));
        files.remove("expected.txt");
        return load(files);
    }

    private static List<String> expected(String folder) {
        return KnowledgeFiles.inFolder(BROKEN.resolve(folder)).get("expected.txt").lines().toList();
    }

    @Test
    void the_tiny_base_has_no_fault() {
        KnowledgeLoader.Loaded loaded = load(VALID);
        assertThat(loaded.faults()).isEmpty();
        assertThat(loaded.base().orElseThrow().methods()).containsOnlyKeys("alc_wipe", "flood_rinse", "neutral_wash",
                "refer_paint");
    }

    @ParameterizedTest
    @MethodSource("broken")
    void exactly_the_faults_of_a_broken_base_are_named(String folder) {
        KnowledgeLoader.Loaded loaded = loadBroken(folder);
        List<String> expected = expected(folder);
        assertThat(loaded.base()).isEmpty();
        assertThat(expected).isNotEmpty().allSatisfy(words -> assertThat(loaded.faults())
                .anySatisfy(fault -> assertThat(fault.toString()).startsWith(words)));
        assertThat(loaded.faults()).allSatisfy(fault -> assertThat(expected)
                .anySatisfy(words -> assertThat(fault.toString()).startsWith(words)));
    }

    @ParameterizedTest
    @MethodSource("broken")
    void every_fault_says_what_to_do(String folder) {
        assertThat(loadBroken(folder).faults()).allSatisfy(fault -> {
            assertThat(fault.file()).isNotBlank();
            assertThat(fault.wrong()).isNotBlank();
            assertThat(fault.remedy()).isNotBlank();
        });
    }

    @Test
    void one_base_with_everything_wrong_makes_every_check_speak() {
        Map<String, String> files = new TreeMap<>(VALID);
        files.putAll(KnowledgeFiles.inFolder(BROKEN.resolve("everything-wrong")));
        Draft draft = KnowledgeLoader.draft(files, Set.of());
        assertThat(Check.ALL).allSatisfy(check -> assertThat(check.faults(draft)).as(check.getClass().getSimpleName())
                .isNotEmpty());
    }

    @Test
    void proven_knowledge_is_the_same_without_the_schemas() {
        assertThat(KnowledgeLoader.loadProven(VALID, "test")).isEqualTo(load(VALID));
    }

    @Test
    void without_the_ids_of_rules_nothing_is_said_of_unused_gates_and_sources() {
        Map<String, String> files = new TreeMap<>(VALID);
        files.putAll(KnowledgeFiles.inFolder(BROKEN.resolve("unused-entries")));
        assertThat(KnowledgeLoader.load(files, "test").faults()).extracting(Fault::file)
                .contains("agents/spare.yaml").doesNotContain("gates.yaml", "sources.yaml", "words/ppe.yaml");
    }

    @Test
    void an_id_that_a_rule_names_is_used() {
        Map<String, String> files = new TreeMap<>(VALID);
        files.putAll(KnowledgeFiles.inFolder(BROKEN.resolve("unused-entries")));
        assertThat(KnowledgeLoader.load(files, "test", Set.of("spare_gate", "spare-guide")).faults()).extracting(Fault::file)
                .contains("words/ppe.yaml").doesNotContain("gates.yaml", "sources.yaml");
    }

    @Test
    void an_empty_folder_is_told_and_raises_nothing() {
        assertThat(load(Map.of()).faults()).extracting(Fault::toString).containsExactlyInAnyOrder(
                "mechanisms.yaml: it is missing, and the program asks for what stands in it; put back the file that came with"
                        + " the program [place]",
                "decisions.yaml: it is missing, and the program asks for what stands in it; put back the file that came with"
                        + " the program [place]",
                "assumptions.yaml: it is missing, and the program asks for what stands in it; put back the file that came with"
                        + " the program [place]");
    }

    @Test
    void any_damage_to_any_file_raises_nothing() {
        VALID.forEach((file, text) -> {
            for (int cut = 0; cut < text.length(); cut += 61) {
                Map<String, String> files = new TreeMap<>(VALID);
                files.put(file, text.substring(0, cut));
                assertThat(load(files)).isNotNull();
                files.put(file, text.substring(0, cut) + text.substring(Math.min(text.length(), cut + 3)));
                assertThat(load(files)).isNotNull();
            }
        });
    }
}
