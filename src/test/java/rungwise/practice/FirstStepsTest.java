package rungwise.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import rungwise.Base;
import rungwise.knowledge.KnowledgeBase;
import tools.jackson.databind.JsonNode;

/**
 * An instrument more than a test: how often the first step is one that a seasoned hand would take, and whether what
 * belongs is there and what does not is not. Each miss stands in {@code target/first-steps.txt}. The floors hold what was
 * reached, so that it can only rise.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FirstStepsTest {
    private static final Path FOLDER = Path.of("src/test/resources/first-steps");
    private static final Set<String> ACTIONS = Set.of("try", "repeat", "prepare", "test", "wait", "flush", "reassess",
            "leave", "refer", "stop", "hold", "done");
    private static final List<JsonNode> CASES = Trade.entries(FOLDER);

    private final Score goodShare = new Score("good");
    private final Score acceptableShare = new Score("acceptable");
    private final Score wrongShare = new Score("wrong");
    private final Score dangerousShare = new Score("dangerous");
    private final Score mustShare = new Score("must");
    private final Score orderShare = new Score("order");
    private final Score preparationShare = new Score("preparation");
    private final Score neverShare = new Score("never");
    private final Score saysShare = new Score("says");
    private final Score shortShare = new Score("short");
    private final List<Score> floored = List.of(goodShare, mustShare, orderShare, preparationShare, neverShare,
            saysShare, shortShare);
    private final List<Score> capped = List.of(wrongShare, dangerousShare);

    @BeforeAll
    void read_every_case() {
        List<String> misses = new ArrayList<>();
        for (JsonNode one : CASES) {
            Printed printed = Printed.of(one.path("question"));
            List<String> missed = new Reading(one, printed).missed();
            if (!missed.isEmpty()) {
                misses.add(one.path("name").asString());
                misses.add("    " + printed.action() + " " + printed.first().orElse("-") + "; before " + printed.before()
                        + "; rungs " + printed.rungs() + "; beside " + printed.alternatives());
                missed.forEach(m -> misses.add("    " + m));
            }
        }
        String scores = "first steps: " + Stream.of(List.of(goodShare, acceptableShare), capped, floored.subList(1, floored.size()))
                .flatMap(List::stream).map(Score::toString).collect(Collectors.joining(", "));
        System.out.println(scores);
        misses.add(0, scores);
        Trade.report("first-steps.txt", misses);
    }

    @Test
    void no_share_falls_below_its_floor() {
        JsonNode floors = Trade.map(FOLDER, "floors.yaml");
        assertThat(floors.propertyNames()).containsExactlyInAnyOrderElementsOf(
                Stream.concat(floored.stream(), capped.stream()).map(Score::name).toList());
        floored.forEach(s -> assertThat(s.share()).as(s.toString()).isGreaterThanOrEqualTo(floors.path(s.name()).asDouble()));
        capped.forEach(s -> assertThat(s.share()).as(s.toString()).isLessThanOrEqualTo(floors.path(s.name()).asDouble()));
    }

    /** A mistyped name would never be met, and a mistyped ban never broken. */
    @Test
    void every_case_has_only_known_keys_and_names() {
        KnowledgeBase base = Base.advisor().knowledge();
        Set<String> names = new TreeSet<>();
        for (JsonNode one : CASES) {
            String name = one.path("name").asString();
            assertThat(names.add(name)).as(name).isTrue();
            assertThat(one.propertyNames()).as(name).isSubsetOf("name", "why", "basis", "sources", "question", "good",
                    "acceptable", "actions", "must", "order", "preparation", "never", "says", "mostRungs", "note", "missing");
            assertThat(one.path("why").asString()).as(name).isNotBlank();
            assertThat(one.path("basis").asString()).as(name).isIn("published", "common_practice", "memory");
            assertThat(base.sources().keySet()).as(name).containsAll(Trade.names(one.path("sources")));
            assertThat(one.path("basis").asString().equals("published") && one.path("sources").isEmpty())
                    .as(name + " is published somewhere").isFalse();
            assertThat(ACTIONS).as(name).containsAll(Trade.names(one.path("actions")));
            assertThat(one.path("preparation").propertyNames()).as(name).isSubsetOf("must", "never");
            assertThat(one.path("good").size() + one.path("acceptable").size() + one.path("actions").size()).as(name).isPositive();
            assertThat(base.methods().keySet()).as(name).containsAll(methods(one));
        }
        assertThat(Trade.groups().propertyNames()).doesNotContainAnyElementsOf(base.methods().keySet());
    }

    @Test
    void no_case_asks_for_what_it_forbids() {
        for (JsonNode one : CASES) {
            List<String> never = Trade.expanded(one.path("never"));
            for (String key : List.of("good", "acceptable", "must")) {
                assertThat(Trade.expanded(one.path(key)).stream().filter(never::contains))
                        .as(one.path("name").asString() + ": " + key).isEmpty();
            }
            List<String> spoils = Trade.expanded(one.path("preparation").path("never"));
            assertThat(Trade.expanded(one.path("preparation").path("must")).stream().filter(spoils::contains))
                    .as(one.path("name").asString()).isEmpty();
        }
    }

    private static Set<String> methods(JsonNode one) {
        Set<String> methods = new TreeSet<>();
        for (String key : List.of("good", "acceptable", "must", "never")) {
            methods.addAll(Trade.expanded(one.path(key)));
        }
        one.path("order").forEach(pair -> methods.addAll(Trade.names(pair)));
        one.path("preparation").forEach(list -> methods.addAll(Trade.expanded(list)));
        return methods;
    }

    /** One case beside its answer. */
    private final class Reading {
        private final JsonNode one;
        private final Printed printed;

        Reading(JsonNode one, Printed printed) {
            this.one = one;
            this.printed = printed;
        }

        List<String> missed() {
            List<String> missed = new ArrayList<>();
            firstStep(missed);
            for (String method : Trade.names(one.path("must"))) {
                note(mustShare, printed.anywhere().contains(method), "not offered: " + method, missed);
            }
            List<String> sequence = printed.sequence();
            for (JsonNode pair : one.path("order")) {
                int first = sequence.indexOf(pair.path(0).asString());
                int then = sequence.indexOf(pair.path(1).asString());
                if (first >= 0 && then >= 0) {
                    note(orderShare, first < then, "turned: " + pair.path(0).asString() + " before " + pair.path(1).asString(), missed);
                }
            }
            preparation(missed);
            List<String> offered = printed.anywhere();
            List<String> broken = Trade.expanded(one.path("never")).stream().filter(offered::contains).toList();
            note(neverShare, broken.isEmpty(), "never, but named: " + broken, missed);
            for (JsonNode words : one.path("says")) {
                note(saysShare, Trade.names(words).stream().anyMatch(printed.words()::contains), "does not say " + words, missed);
            }
            if (one.has("mostRungs")) {
                note(shortShare, printed.rungs().size() <= one.path("mostRungs").asInt(), printed.rungs().size() + " rungs, "
                        + one.path("mostRungs").asInt() + " are enough", missed);
            }
            return missed;
        }

        private void firstStep(List<String> missed) {
            List<String> never = Trade.expanded(one.path("never"));
            Optional<String> first = printed.first();
            boolean dangerous = first.filter(never::contains).isPresent()
                    || printed.works() && printed.around().stream().anyMatch(never::contains);
            boolean good = !dangerous && (Trade.names(one.path("actions")).contains(printed.action())
                    || first.filter(Trade.expanded(one.path("good"))::contains).isPresent());
            boolean acceptable = !dangerous && !good && first.filter(Trade.expanded(one.path("acceptable"))::contains).isPresent();
            goodShare.count(good);
            acceptableShare.count(acceptable);
            wrongShare.count(!good && !acceptable && !dangerous);
            dangerousShare.count(dangerous);
            if (!good) {
                missed.add((dangerous ? "dangerous first step" : acceptable ? "acceptable first step" : "wrong first step")
                        + "; good: " + Trade.names(one.path("good")) + Trade.names(one.path("actions")));
            }
        }

        /** What must be prepared is prepared or is itself the first rung; what spoils it may come later, not before. */
        private void preparation(List<String> missed) {
            for (String step : Trade.expanded(one.path("preparation").path("must"))) {
                note(preparationShare, printed.before().contains(step) || printed.first().filter(step::equals).isPresent(),
                        "not prepared: " + step, missed);
            }
            if (one.path("preparation").has("never")) {
                List<String> spoils = Trade.expanded(one.path("preparation").path("never")).stream().filter(printed.around()::contains).toList();
                note(preparationShare, spoils.isEmpty(), "spoils it beforehand: " + spoils, missed);
            }
        }

        private static void note(Score score, boolean met, String otherwise, List<String> missed) {
            if (!score.count(met)) {
                missed.add(otherwise);
            }
        }
    }
}
