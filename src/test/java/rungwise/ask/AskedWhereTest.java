package rungwise.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.knowledge.surface.Surface;
import rungwise.knowledge.words.AskedFact;
import rungwise.ladder.ChanceTable;
import tools.jackson.databind.JsonNode;

/** No fact is asked of a surface that cannot have it: every fact on every surface, against what the trade says. */
class AskedWhereTest {
    private static final KnowledgeBase KNOWN = Base.advisor().knowledge();
    private static final Map<String, AskedFact> FACTS = KNOWN.questionWords().facts();
    private static final Trials TRIALS = new Trials(Base.advisor(), ChanceTable.PRIOR);

    private static JsonNode trade() throws IOException {
        return Mappers.yaml().readTree(Files.readString(Path.of("src/test/resources/words/asked-where.yaml")));
    }

    private static Set<String> surfaces(JsonNode where) {
        List<String> kinds = where.path("on").valueStream().map(JsonNode::asString).toList();
        List<String> never = where.path("never").valueStream().map(JsonNode::asString).toList();
        assertThat(KNOWN.surfaces().keySet()).containsAll(never);
        return KNOWN.surfaces().values().stream().filter(s -> kinds.isEmpty() || kinds.contains(s.kind().toString().toLowerCase(java.util.Locale.ROOT)))
                .map(Surface::id).filter(id -> !never.contains(id)).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void the_trade_says_of_every_fact_where_it_is_asked() throws IOException {
        assertThat(trade().propertyNames()).containsExactlyInAnyOrderElementsOf(FACTS.keySet());
    }

    @TestFactory
    Stream<DynamicTest> a_fact_is_asked_where_a_surface_can_have_it_and_nowhere_else() throws IOException {
        JsonNode trade = trade();
        return FACTS.values().stream().map(fact -> DynamicTest.dynamicTest(fact.asks(), () -> {
            Set<String> can = surfaces(trade.path(fact.id()));
            assertThat(can).isNotEmpty();
            assertThat(KNOWN.surfaces().values().stream().filter(fact::isOn).map(Surface::id)).containsExactlyInAnyOrderElementsOf(can);
        }));
    }

    /** What a talk may still ask on a surface is no more, and no reply stands there alone. */
    @Test
    void a_talk_on_a_surface_may_ask_what_it_can_have() throws IOException {
        JsonNode trade = trade();
        KNOWN.surfaces().keySet().forEach(surface -> {
            Told told = Told.nothing().with(Told.SURFACE, Told.SURFACE, List.of(surface)).with(Told.DEPOSIT, Told.DEPOSIT, List.of("tar_spot"));
            List<AskedFact> open = TRIALS.open(told, TRIALS.answer(told));
            assertThat(open).as(surface).isNotEmpty().allSatisfy(fact -> {
                assertThat(surfaces(trade.path(fact.id()))).as(fact.id()).contains(surface);
                assertThat(TRIALS.replies(fact, told)).as(fact.id()).isNotEmpty();
            });
        });
    }
}
