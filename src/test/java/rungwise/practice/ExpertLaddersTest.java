package rungwise.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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
 * {@code target/expert-ladders.txt}, and in the ladder itself with the reason of the trade why the answer keeps it: under
 * {@code without} a rung that is not offered, under {@code besides} one that is offered and not the expert's, under
 * {@code otherwise} a rung that stands after one it should precede, a correction, a closing step or a way out that differs.
 * The floors hold what was reached, so that it can only rise; they count such a difference as one.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExpertLaddersTest {
    private static final Path FOLDER = Path.of("src/test/resources/expert-ladders");
    private static final List<JsonNode> LADDERS = Trade.entries(FOLDER);
    private static final JsonNode TOLD = Trade.map(FOLDER, "told.yaml");

    private final Score foundShare = new Score("found");
    private final Score foundAnywhereShare = new Score("found-anywhere");
    private final Score preparationShare = new Score("preparation");
    private final Score orderShare = new Score("order");
    private final Score markShare = new Score("mark");
    private final Score afterwardsShare = new Score("afterwards");
    private final Score wayOutShare = new Score("way-out");
    private final Score notTheirsShare = new Score("not-theirs");
    private final Score pointlessOrHarmfulShare = new Score("pointless-or-harmful");
    private final List<String> unexplained = new ArrayList<>();
    private final List<Score> floored = List.of(foundShare, foundAnywhereShare, preparationShare, orderShare, markShare,
            afterwardsShare, wayOutShare);
    private final List<Score> capped = List.of(notTheirsShare, pointlessOrHarmfulShare);

    @BeforeAll
    void read_every_ladder() {
        List<String> misses = new ArrayList<>();
        for (JsonNode one : LADDERS) {
            ObjectNode question = one.path("question").deepCopy().asObject();
            TOLD.forEachEntry((key, value) -> question.set(key, question.path(key).isObject()
                    ? value.deepCopy().asObject().setAll(question.path(key).asObject()) : value));
            Printed printed = Printed.worked(question);
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

    /** A difference is mended, or it has its reason; and a reason whose difference has gone goes too. */
    @Test
    void each_difference_has_its_reason_and_each_reason_its_difference() {
        assertThat(unexplained).isEmpty();
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
                    "wayOut", "byHand", "not", "notByHand", "without", "besides", "otherwise", "note", "basis", "sources");
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
        List<String> anywhere = printed.done();
        Set<String> without = new TreeSet<>();
        for (JsonNode rung : one.path("ladder")) {
            List<String> choice = choice(rung);
            foundAnywhereShare.count(choice.stream().anyMatch(anywhere::contains));
            if (!foundShare.count(choice.stream().anyMatch(offered::contains))) {
                without.add(choice.get(0));
                missed.add("no rung: " + choice.stream().map(c -> c + printed.where(c)).collect(Collectors.joining(" or ")));
            }
        }
        one.path("preparation").forEach(p -> preparationShare.count(choice(p).stream().anyMatch(anywhere::contains)));
        Map<String, String> otherwise = new TreeMap<>();
        order(one, printed.rungs(), otherwise);
        one.path("mark").forEach(m -> note(markShare, choice(m).stream().anyMatch(c -> printed.marks().contains(c)
                || offered.contains(c) || printed.wayOut().equals(c)), choice(m).get(0), "not for the mark", otherwise));
        one.path("afterwards").forEach(a -> note(afterwardsShare, choice(a).stream().anyMatch(anywhere::contains),
                choice(a).get(0), "not afterwards", otherwise));
        if (one.has("wayOut")) {
            note(wayOutShare, choice(one.path("wayOut")).contains(printed.wayOut()), choice(one.path("wayOut")).get(0),
                    "no way out, but " + printed.wayOut(), otherwise);
        }
        otherwise.forEach((what, how) -> missed.add(what + ": " + how));
        explained(one, "otherwise", otherwise.keySet());
        List<String> theirs = theirs(one);
        List<String> not = Trade.expanded(one.path("not"));
        List<String> strange = offered.stream().filter(m -> notTheirsShare.count(!theirs.contains(m))).toList();
        List<String> bad = offered.stream().filter(m -> pointlessOrHarmfulShare.count(not.contains(m))).toList();
        explained(one, "without", without);
        explained(one, "besides", strange);
        if (!strange.isEmpty()) {
            missed.add("not theirs: " + strange + (bad.isEmpty() ? "" : ", pointless or harmful: " + bad));
        }
        return missed;
    }

    private void explained(JsonNode one, String as, Collection<String> differences) {
        Set<String> given = new TreeSet<>(one.path(as).propertyNames());
        differences.stream().filter(d -> !given.contains(d)).forEach(d -> unexplained.add(where(one) + ": no reason " + as + " " + d));
        given.stream().filter(g -> !differences.contains(g)).forEach(g -> unexplained.add(where(one) + ": no difference any more, " + as + " " + g));
    }

    /** Neighbours in the expert's ladder that are both rungs stand in the same order. */
    private void order(JsonNode one, List<String> rungs, Map<String, String> missed) {
        List<Integer> places = new ArrayList<>();
        one.path("ladder").forEach(r -> choice(r).stream().mapToInt(rungs::indexOf).filter(i -> i >= 0).findFirst()
                .ifPresent(places::add));
        for (int i = 1; i < places.size(); i++) {
            note(orderShare, places.get(i - 1) < places.get(i), rungs.get(places.get(i - 1)),
                    "after " + rungs.get(places.get(i)) + " in the answer", missed);
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

    private static void note(Score score, boolean met, String what, String otherwise, Map<String, String> missed) {
        if (!score.count(met)) {
            missed.put(what, otherwise);
        }
    }
}
