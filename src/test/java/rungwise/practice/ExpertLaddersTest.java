package rungwise.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
import tools.jackson.databind.node.ObjectNode;

/**
 * An instrument more than a test: how much of the ladder that an expert would write for each deposit, on a usual surface at
 * a usual age, is in the answer, and how much of what is offered is not the expert's. Each difference stands in
 * {@code target/expert-ladders.txt}. The floors hold what was reached, so that it can only rise.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExpertLaddersTest {
    private static final Path FOLDER = Path.of("src/test/resources/expert-ladders");
    private static final List<JsonNode> LADDERS = Trade.entries(FOLDER);
    private static final JsonNode TOLD = Trade.map(FOLDER, "told.yaml");

    private final Score foundShare = new Score("found");
    private final Score foundAnywhereShare = new Score("found-anywhere");
    private final Score orderShare = new Score("order");
    private final Score markShare = new Score("mark");
    private final Score afterwardsShare = new Score("afterwards");
    private final Score wayOutShare = new Score("way-out");
    private final Score notTheirsShare = new Score("not-theirs");
    private final Score pointlessOrHarmfulShare = new Score("pointless-or-harmful");
    private final List<Score> floored = List.of(foundShare, foundAnywhereShare, orderShare, markShare,
            afterwardsShare, wayOutShare);
    private final List<Score> capped = List.of(notTheirsShare, pointlessOrHarmfulShare);

    @BeforeAll
    void read_every_ladder() {
        List<String> misses = new ArrayList<>();
        for (JsonNode one : LADDERS) {
            ObjectNode question = one.path("question").deepCopy().asObject();
            TOLD.forEachEntry((key, value) -> question.set(key, question.path(key).isObject()
                    ? value.deepCopy().asObject().setAll(question.path(key).asObject()) : value));
            Printed printed = Printed.of(question);
            List<String> missed = missed(one, printed);
            if (!missed.isEmpty()) {
                misses.add(where(one));
                misses.add("    expert " + one.path("ladder") + "; answer " + printed.action() + " " + printed.rungs()
                        + "; beside " + printed.alternatives() + "; before " + printed.before());
                missed.forEach(m -> misses.add("    " + m));
            }
        }
        String scores = "expert ladders: " + Stream.concat(floored.stream(), capped.stream()).map(Score::toString)
                .collect(Collectors.joining(", "));
        System.out.println(scores);
        misses.add(0, scores);
        Trade.report("expert-ladders.txt", misses);
    }

    @Test
    void no_share_falls_below_its_floor() {
        JsonNode floors = Trade.map(FOLDER, "floors.yaml");
        assertThat(floors.propertyNames()).containsExactlyInAnyOrderElementsOf(
                Stream.concat(floored.stream(), capped.stream()).map(Score::name).toList());
        floored.forEach(s -> assertThat(s.share()).as(s.toString()).isGreaterThanOrEqualTo(floors.path(s.name()).asDouble()));
        capped.forEach(s -> assertThat(s.share()).as(s.toString()).isLessThanOrEqualTo(floors.path(s.name()).asDouble()));
    }

    @Test
    void every_deposit_has_a_ladder() {
        assertThat(LADDERS.stream().map(l -> l.path("question").path("contaminant").asString()).collect(Collectors.toSet()))
                .containsExactlyInAnyOrderElementsOf(Base.advisor().knowledge().contaminants().keySet());
    }

    /** A mistyped rung would never be found. */
    @Test
    void every_ladder_has_only_known_keys_and_names() {
        KnowledgeBase base = Base.advisor().knowledge();
        Set<String> wheres = new TreeSet<>();
        for (JsonNode one : LADDERS) {
            String where = where(one);
            assertThat(wheres.add(where)).as(where).isTrue();
            assertThat(one.propertyNames()).as(where).isSubsetOf("question", "preparation", "ladder", "mark", "afterwards",
                    "wayOut", "byHand", "not", "notByHand", "note", "basis", "sources");
            assertThat(one.path("basis").asString()).as(where).isIn("published", "common_practice", "memory");
            assertThat(base.sources().keySet()).as(where).containsAll(Trade.names(one.path("sources")));
            List<String> theirs = theirs(one);
            List<String> not = Trade.expanded(one.path("not"));
            assertThat(base.methods().keySet()).as(where).containsAll(theirs).containsAll(not);
            assertThat(theirs.stream().filter(not::contains)).as(where).isEmpty();
            assertThat(one.path("ladder").size() + one.path("wayOut").size() + one.path("wayOut").asString("").length())
                    .as(where).isPositive();
        }
    }

    private static String where(JsonNode one) {
        JsonNode question = one.path("question");
        return question.path("contaminant").asString() + " on " + question.path("surface").asString() + ", "
                + question.path("age").asString();
    }

    private List<String> missed(JsonNode one, Printed printed) {
        List<String> missed = new ArrayList<>();
        List<String> offered = printed.offered();
        List<String> anywhere = printed.anywhere();
        for (JsonNode rung : one.path("ladder")) {
            List<String> choice = choice(rung);
            foundAnywhereShare.count(choice.stream().anyMatch(anywhere::contains));
            note(foundShare, choice.stream().anyMatch(offered::contains), "no rung: " + choice.stream().map(c -> c + printed.where(c)).collect(Collectors.joining(" or ")), missed);
        }
        order(one, printed.rungs(), missed);
        one.path("mark").forEach(m -> note(markShare, choice(m).stream().anyMatch(c -> printed.marks().contains(c)
                || offered.contains(c) || printed.wayOut().equals(c)), "not for the mark: " + String.join(" or ", choice(m)), missed));
        one.path("afterwards").forEach(a -> note(afterwardsShare, choice(a).stream().anyMatch(anywhere::contains),
                "not afterwards: " + String.join(" or ", choice(a)), missed));
        if (one.has("wayOut")) {
            note(wayOutShare, choice(one.path("wayOut")).contains(printed.wayOut()), "way out " + printed.wayOut() + ", not "
                    + String.join(" or ", choice(one.path("wayOut"))), missed);
        }
        List<String> theirs = theirs(one);
        List<String> not = Trade.expanded(one.path("not"));
        List<String> strange = offered.stream().filter(m -> notTheirsShare.count(!theirs.contains(m))).toList();
        List<String> bad = offered.stream().filter(m -> pointlessOrHarmfulShare.count(not.contains(m))).toList();
        if (!strange.isEmpty()) {
            missed.add("not theirs: " + strange + (bad.isEmpty() ? "" : ", pointless or harmful: " + bad));
        }
        return missed;
    }

    /** Neighbours in the expert's ladder that are both rungs stand in the same order. */
    private void order(JsonNode one, List<String> rungs, List<String> missed) {
        List<Integer> places = new ArrayList<>();
        one.path("ladder").forEach(r -> choice(r).stream().mapToInt(rungs::indexOf).filter(i -> i >= 0).findFirst()
                .ifPresent(places::add));
        for (int i = 1; i < places.size(); i++) {
            note(orderShare, places.get(i - 1) < places.get(i), "turned: " + rungs.get(places.get(i - 1)) + " before "
                    + rungs.get(places.get(i)), missed);
        }
    }

    private static List<String> theirs(JsonNode one) {
        return Stream.of("preparation", "ladder", "mark", "afterwards", "wayOut").map(one::path)
                .flatMap(list -> list.isArray() ? list.valueStream() : list.isMissingNode() ? Stream.empty() : Stream.of(list))
                .flatMap(entry -> choice(entry).stream()).distinct().toList();
    }

    /** An entry is one method, or a choice of several. */
    private static List<String> choice(JsonNode entry) {
        return entry.isArray() ? Trade.names(entry) : List.of(entry.asString());
    }

    private static void note(Score score, boolean met, String otherwise, List<String> missed) {
        if (!score.count(met)) {
            missed.add(otherwise);
        }
    }
}
