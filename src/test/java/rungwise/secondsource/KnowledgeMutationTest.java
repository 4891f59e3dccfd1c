package rungwise.secondsource;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.cli.CaseFile;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.question.BadQuestion;
import tools.jackson.databind.JsonNode;

/**
 * Changes one figure of knowledge at a time: loading, a second source or a case that names the entry must then object. A long
 * run over a drawn sample, {@code mvn -Pknowledge-mutation test -Dtest=KnowledgeMutationTest}; the build makes a few changes only.
 */
class KnowledgeMutationTest {
    private static final Path CASES = Path.of("src/test/resources/cases");
    private static final KnowledgeBase BASE = Base.advisor().knowledge();
    /** How many cases that name an entry are asked at most. */
    private static final int ASKED = 12;
    private static final List<JsonNode> ALL = cases();

    private static List<JsonNode> cases() {
        try {
            return Base.entries(CASES);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Which check objects, if any. */
    private static Optional<String> killedBy(Changed changed) {
        var loaded = changed.loaded();
        if (loaded.base().isEmpty() || !loaded.faults().isEmpty()) {
            return Optional.of("loading");
        }
        KnowledgeBase base = loaded.base().get();
        if (!Elsewhere.differences(base).isEmpty()) {
            return Optional.of("second source");
        }
        CaseFile file = new CaseFile(new Advisor(base, Base.advisor().rules()));
        return naming(changed.entry()).stream().filter(one -> differs(file, one)).findFirst().map(one -> "case");
    }

    /** Where a change leaves nothing to say there is no answer at all. */
    private static boolean differs(CaseFile file, JsonNode one) {
        try {
            return !file.differences(one).isEmpty();
        } catch (IllegalStateException | BadQuestion nothingToSay) {
            return true;
        }
    }

    private static List<JsonNode> naming(String entry) {
        List<JsonNode> naming = new ArrayList<>(ALL.stream().filter(c -> c.toString().contains('"' + entry + '"')).toList());
        Collections.shuffle(naming, new Random(entry.hashCode()));
        return naming.subList(0, Math.min(ASKED, naming.size()));
    }

    @Test
    void a_few_changes_are_noticed_in_every_build() {
        List<Changed> few = List.of(
                Changed.of("surfaces/clear_2k_sound.yaml", "clear_2k_sound", "/maxC", v -> v + 30),
                Changed.of("surfaces/pmma_lens.yaml", "pmma_lens", "/maxC", v -> v + 40),
                Changed.of("gloves.yaml", "acetone", "charts", c -> c.path("glove").asString().equals("nitrile"), "minutes", v -> v * 20),
                Changed.of("exposure.yaml", "ketone_vapour", "limits", l -> l.path("over").asString().equals("shift"), "value", v -> v * 9),
                Changed.of("contaminants/brake_fluid.yaml", "brake_fluid", "/marks/hot", v -> v * 10),
                Changed.of("methods/sanding.yaml", "sand_p1500", "/severity/filmMicrons", v -> v / 10));
        few.forEach(c -> assertThat(killedBy(c)).as(c.toString()).isPresent());
    }

    @Test
    void a_change_that_changes_nothing_is_not_noticed() {
        assertThat(killedBy(Changed.of("surfaces/pmma_lens.yaml", "pmma_lens", "/maxC", v -> v))).isEmpty();
    }

    @Test
    void a_drawn_sample_of_changes_is_noticed_and_survivors_are_listed() throws IOException {
        int size = Integer.getInteger("knowledge-mutations", 0);
        Assumptions.assumeTrue(size > 0, "a long run of its own");
        Instant start = Instant.now();
        Map<String, List<Changed>> drawn = Changes.drawn(new Random(20261201), size);
        Map<String, Set<String>> survivors = new TreeMap<>();
        Map<String, Map<String, Integer>> killed = new TreeMap<>();
        drawn.forEach((kind, changes) -> {
            Set<String> left = ConcurrentHashMap.newKeySet();
            Map<String, Integer> by = new ConcurrentHashMap<>();
            changes.parallelStream().forEach(c -> killedBy(c).ifPresentOrElse(k -> by.merge(k, 1, Integer::sum), () -> left.add(c.toString())));
            survivors.put(kind, new TreeSet<>(left));
            killed.put(kind, new TreeMap<>(by));
            System.out.printf(Locale.ROOT, "knowledge mutation, %s: %d changed, noticed %s, survived %d%n", kind, changes.size(), by, left.size());
        });
        int changes = drawn.values().stream().mapToInt(List::size).sum();
        int left = survivors.values().stream().mapToInt(Set::size).sum();
        System.out.println("knowledge mutation at revision " + BASE.revision() + ": " + changes + " figures changed one at a time, " + (changes - left)
                + " noticed, " + left + " survived; " + Duration.between(start, Instant.now()).toSeconds() + " s");
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "knowledge-mutation.yaml"), Mappers.yaml().writeValueAsString(
                Map.of("revision", BASE.revision(), "changed", changes, "noticed", killed, "survivors", survivors)));
        assertThat(changes).isPositive();
        assertThat(left).as("survivors of " + changes).isLessThan(changes);
    }
}
