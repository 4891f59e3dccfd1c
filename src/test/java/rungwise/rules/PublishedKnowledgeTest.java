package rungwise.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** What an entry calls published can be looked up, as in the rules; and where a figure is used beyond its range, its entry says so. */
class PublishedKnowledgeTest {
    private static final Path KNOWLEDGE = Path.of("knowledge");

    private record Based(String file, String basis, List<String> sources) {
    }

    @Test
    void what_is_published_has_a_source_that_can_be_looked_up() throws IOException {
        List<Based> all = all();
        Map<String, Integer> bases = new TreeMap<>();
        all.forEach(b -> bases.merge(b.basis(), 1, Integer::sum));
        System.out.println("bases of knowledge: " + bases);
        assertThat(all).filteredOn(b -> b.basis().equals("published")).hasSizeGreaterThan(100)
                .allSatisfy(b -> assertThat(b.sources()).as(b.toString()).anyMatch(LookedUp::can));
    }

    @Test
    void constants_that_begin_above_a_cool_day_are_marked_as_extrapolated() {
        assertThat(Base.advisor().knowledge().substances().values())
                .filteredOn(s -> s.antoine().map(a -> a.fromC() > 20).orElse(false)).hasSizeGreaterThanOrEqualTo(5)
                .allSatisfy(s -> assertThat(s.note()).as(s.id())
                        .contains("extrapolated below " + s.antoine().orElseThrow().fromC() + " °C"));
    }

    private static List<Based> all() throws IOException {
        YAMLMapper yaml = new YAMLMapper();
        List<Based> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(KNOWLEDGE)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                collect(file.toString(), yaml.readTree(file.toFile()), found);
            }
        }
        return found;
    }

    private static void collect(String file, JsonNode node, List<Based> found) {
        if (node.path("basis").isString()) {
            List<String> sources = new ArrayList<>();
            node.path("sources").forEach(s -> sources.add(s.asString()));
            found.add(new Based(file + " " + node.path("id").asString(""), node.path("basis").asString(), sources));
        }
        node.forEach(child -> collect(file, child, found));
    }
}
