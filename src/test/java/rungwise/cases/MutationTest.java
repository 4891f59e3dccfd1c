package rungwise.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import rungwise.question.QuestionReader;
import rungwise.rules.RuleBook;
import tools.jackson.databind.JsonNode;

/**
 * Leaves out each rule in turn: some case must then differ, in a rung, bar, gate, order, bridge, step or protection.
 * A long run, {@code mvn -Pmutation test -Dtest=MutationTest}; its last result is kept in {@code mutation.yaml}.
 */
class MutationTest {
    private static final Path LAST = Path.of("src/test/resources/mutation.yaml");

    @Test
    void the_last_run_names_every_rule_that_no_case_would_miss() throws IOException {
        JsonNode last = Mappers.yaml().readTree(Files.readString(LAST));
        assertThat(last.path("revision").asString()).matches("[0-9a-f]{12}");
        assertThat(last.path("rules").asInt()).isEqualTo(last.path("missed").asInt()
                + last.path("missedSince").asInt() + last.path("survivors").size());
        last.path("survivors").properties().forEach(s -> {
            assertThat(Base.advisor().rules().rules()).containsKey(s.getKey());
            assertThat(s.getValue().asString()).as("why " + s.getKey() + " may survive").isNotBlank();
        });
    }

    @Test
    void every_rule_is_missed_by_some_case() throws IOException {
        Assumptions.assumeTrue(Boolean.getBoolean("mutation"), "a long run of its own");
        Instant start = Instant.now();
        List<Asked> asked = List.of(Asked.of(Base.advisor().knowledge(), CasesTest.cases()),
                Asked.of(InventedCasesTest.known(), InventedCasesTest.cases()));
        Set<String> rules = Base.advisor().rules().rules().keySet();
        Set<String> survivors = ConcurrentHashMap.newKeySet();
        rules.parallelStream().filter(rule -> asked.stream().noneMatch(a -> a.misses(rule))).forEach(survivors::add);
        System.out.println("mutation at revision " + Base.advisor().knowledge().revision() + ": " + rules.size()
                + " rules left out in turn, " + (rules.size() - survivors.size()) + " missed by a case, survivors "
                + new TreeSet<>(survivors) + "; " + Duration.between(start, Instant.now()).toSeconds() + " s");
        Set<String> known = new TreeSet<>();
        Mappers.yaml().readTree(Files.readString(LAST)).path("survivors").properties().forEach(s -> known.add(s.getKey()));
        assertThat(known).as("survivors that mutation.yaml explains").containsAll(survivors);
    }

    /** Cases, what is known where they are asked, and in which of them a rule fires. */
    private record Asked(KnowledgeBase known, Map<String, List<JsonNode>> casesOf) {
        /** Each case from a cold start, as verdicts on a surface and the order of methods are kept between questions. */
        static Asked of(KnowledgeBase known, List<JsonNode> cases) {
            Map<String, List<JsonNode>> byRule = new TreeMap<>();
            for (JsonNode one : cases) {
                fired(known, one).forEach(rule -> byRule.computeIfAbsent(rule, r -> new ArrayList<>()).add(one));
            }
            return new Asked(known, byRule);
        }

        boolean misses(String rule) {
            CaseFile without = new CaseFile(new Advisor(known, Base.advisor().rules().without(rule)));
            return casesOf.getOrDefault(rule, List.of()).stream().anyMatch(one -> differs(without, one));
        }

        /** Where a rule that says what to do next is missing, there is no answer at all. */
        private static boolean differs(CaseFile without, JsonNode one) {
            try {
                return !without.differences(one).isEmpty();
            } catch (IllegalStateException nothingToDo) {
                return true;
            }
        }

        private static Set<String> fired(KnowledgeBase known, JsonNode one) {
            RuleBook book = Base.advisor().rules().unfired();
            try {
                new Advisor(known, book).answer(QuestionReader.read(one.path("question"), known), true);
                return book.fired();
            } catch (BadQuestion refused) {
                return Set.of();
            }
        }
    }
}
