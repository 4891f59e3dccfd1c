package rungwise.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.cli.CaseFile;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.load.Mappers;
import rungwise.start.Opened;
import tools.jackson.databind.JsonNode;

/** What DEVELOPERS.md shows of adding things is added as it stands there: each works, and nothing else had to be touched. */
class AddingThingsTest {
    private static final Pattern BLOCK = Pattern.compile("```\\w*\\n(?:#|//) (\\S+)\\n(.*?)```", Pattern.DOTALL);
    private static final Map<String, String> SHOWN = shown();

    @TempDir
    private static Path folder;
    private static Opened opened;

    private static Map<String, String> shown() {
        try {
            Map<String, String> shown = new LinkedHashMap<>();
            BLOCK.matcher(Files.readString(Path.of("DEVELOPERS.md"))).results().forEach(b -> shown.put(b.group(1), b.group(2)));
            return shown;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** As {@code check --quick} with the two folders: knowledge against its schemas, rules compiled, each against the other. */
    @BeforeAll
    static void add() throws IOException {
        write("knowledge/", KnowledgeFiles.inFolder(Path.of("knowledge")));
        write("rules/", KnowledgeFiles.inFolder(Path.of("rules")));
        for (String file : SHOWN.keySet()) {
            assertThat(folder.resolve(file)).as("a file that is new").doesNotExist();
        }
        write("", SHOWN);
        opened = Opened.from(Optional.of(folder.resolve("knowledge")), Optional.of(folder.resolve("rules")));
    }

    private static void write(String below, Map<String, String> texts) throws IOException {
        for (Map.Entry<String, String> one : texts.entrySet()) {
            Path file = folder.resolve(below + one.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, one.getValue());
        }
    }

    private static Advisor advisor() {
        return opened.orElseThrow();
    }

    @Test
    void an_agent_a_method_a_surface_a_rule_and_cases_are_shown() {
        assertThat(SHOWN.keySet()).extracting(file -> file.substring(0, file.lastIndexOf('/'))).contains("knowledge/agents",
                "knowledge/methods", "knowledge/surfaces", "rules/2-standing", "src/test/resources/cases");
    }

    @Test
    void check_finds_no_fault() {
        assertThat(opened.faults()).isEmpty();
    }

    @Test
    void every_case_that_is_shown_comes_out() {
        List<JsonNode> cases = SHOWN.entrySet().stream().filter(e -> e.getKey().startsWith("src/test/resources/cases/"))
                .flatMap(e -> Mappers.yaml().readTree(e.getValue()).values().stream()).toList();
        assertThat(cases).hasSizeGreaterThan(1).allSatisfy(one -> assertThat(new CaseFile(advisor()).differences(one))
                .as(one.path("name").asString()).isEmpty());
        assertThat(cases).as("without what was added").allSatisfy(one -> assertThat(new CaseFile(Base.advisor()).differences(one))
                .isNotEmpty());
    }

    @Test
    void the_rule_speaks_of_the_new_method_on_the_new_surface_and_on_no_paint() {
        assertThat(cautions("floor_mat_rubber")).contains("gel-in-grooves");
        assertThat(cautions("clear_2k_sound")).isNotEmpty().doesNotContain("gel-in-grooves");
    }

    private static List<String> cautions(String surface) {
        Answer answer = Base.ask(advisor(), "{contaminant: sap_conifer, age: PT6H, surface: " + surface
                + ", setting: {airC: 18, panelC: 18, sun: shade}, done: [washed, dried], shelf: [alc_40_gel]}");
        return answer.rungs().stream().filter(r -> r.method().equals("alc_40_gel")).flatMap(r -> r.risks().stream())
                .flatMap(r -> r.because().stream()).map(b -> b.name()).toList();
    }

    @Test
    void no_other_entry_and_no_other_rule_was_touched() {
        KnowledgeBase before = Base.advisor().knowledge();
        KnowledgeBase after = advisor().knowledge();
        List<Function<KnowledgeBase, Map<String, ?>>> kinds = List.of(KnowledgeBase::contaminants, KnowledgeBase::surfaces,
                KnowledgeBase::methods, KnowledgeBase::agents, KnowledgeBase::tools, KnowledgeBase::families, KnowledgeBase::gates,
                KnowledgeBase::observations, KnowledgeBase::substances, KnowledgeBase::exposures);
        kinds.forEach(kind -> assertThat(kind.apply(after).entrySet()).containsAll((java.util.Set) kind.apply(before).entrySet()));
        assertThat(after.methods()).hasSize(before.methods().size() + 1);
        assertThat(after.surfaces()).hasSize(before.surfaces().size() + 1);
        assertThat(advisor().rules().rules()).containsAllEntriesOf(Base.advisor().rules().rules())
                .hasSize(Base.advisor().rules().rules().size() + 1);
    }
}
