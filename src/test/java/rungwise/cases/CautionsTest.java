package rungwise.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.cli.CaseFile;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

/** What only warns is missed by a case as well: without its rule, a case of the file of cautions differs. */
class CautionsTest {
    private static final JsonNode CASES = read();

    private static JsonNode read() {
        try {
            return Mappers.yaml().readTree(Files.readString(Path.of("src/test/resources/cases/cautions.yaml")));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Set<String> differing(CaseFile file) {
        Set<String> differing = new TreeSet<>();
        StreamSupport.stream(CASES.spliterator(), false).filter(one -> !file.differences(one).isEmpty())
                .forEach(one -> differing.add(one.path("name").asString()));
        return differing;
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"cracked-lamp-not-soaked", "gel-plain-and-clear", "jet-away-from-edges", "lens-tricks", "stressed-plastic-cracks",
            "wind-dries-patch", "caustic-runs-off-aluminium"})
    void without_its_rule_a_caution_is_missed_by_one_case_and_by_one_only(String rule) {
        assertThat(differing(new CaseFile(new Advisor(Base.advisor().knowledge(), Base.advisor().rules().without(rule))))).hasSize(1);
    }

    @Test
    void with_all_rules_none_differs() {
        assertThat(differing(new CaseFile(Base.advisor()))).isEmpty();
    }
}
