package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.question.Question;

/**
 * A deposit that is named is one that is believed with certainty: the answer is the same, whether all the others it could have
 * been are left out or stand beside it at belief 0. Two ladders that differ would mean that one of them is wrong.
 */
class NamedIsABeliefOfOneTest {
    private static final Breaks ALONE = new Breaks("named = belief of one");
    private static final Breaks BESIDE = new Breaks("named = belief of one beside all others at 0");
    private static final Breaks TRIED = new Breaks("named = belief of one after a rung that changed nothing");
    private static final Map<String, Double> NOBODY = new TreeMap<>();

    @BeforeAll
    static void compare() {
        Base.advisor().knowledge().contaminants().keySet().forEach(id -> NOBODY.put(id, 0.0));
        UsualSpots.all().forEach(q -> {
            Placed named = Placed.plain(q);
            String id = q.contaminant().orElseThrow();
            Map<String, Double> all = new TreeMap<>(NOBODY);
            all.put(id, 1.0);
            ALONE.look(named, !named.rungs().isEmpty(), differences(named, Placed.over(Map.of(id, 1.0), q)));
            boolean old = q.age().equals(UsualSpots.AGES.get(1));
            // 129 at once are dear: the old on one half of the spots, the young on the other
            if (old == ((q.surface().hashCode() + id.hashCode()) % 2 == 0)) {
                BESIDE.look(named, !named.rungs().isEmpty(), differences(named, Placed.over(all, q)));
            }
            if (!named.rungs().isEmpty() && old) {
                Question then = new Made(q).tried(List.of(DrawnQuestions.attempt(named.ids().get(0), "no-change", 1, 1, true))).made();
                Placed after = Placed.plain(then);
                TRIED.look(after, !after.rungs().isEmpty(), differences(after, Placed.over(Map.of(id, 1.0), then)));
            }
        });
    }

    /** In what two answers about the same deposit differ. */
    static List<String> differences(Placed one, Placed other) {
        List<String> differences = new ArrayList<>();
        differs("rungs", one.ids(), other.ids(), differences);
        differs("alternatives", one.alternatives().stream().map(Placed.Offer::method).sorted().toList(),
                other.alternatives().stream().map(Placed.Offer::method).sorted().toList(), differences);
        differs("next step", one.next(), other.next(), differences);
        differs("minutes", minutes(one), minutes(other), differences);
        differs("chance that it is off", one.expected().cleared(), other.expected().cleared(), differences);
        differs("mark already beneath", one.expected().alreadyMarked(), other.expected().alreadyMarked(), differences);
        differs("mark by work", one.expected().markByWork(), other.expected().markByWork(), differences);
        differs("steps before", one.before(), other.before(), differences);
        differs("steps after", one.after(), other.after(), differences);
        for (Placed.Offer rung : one.rungs()) {
            other.rungs().stream().filter(r -> r.method().equals(rung.method())).forEach(same -> {
                differs("chance of a rung", rung.chance(), same.chance(), differences);
                differs("grade or key", List.of(rung.grades(), rung.key()), List.of(same.grades(), same.key()), differences);
                differs("gates or protection", List.of(rung.gates(), rung.protection()), List.of(same.gates(), same.protection()),
                        differences);
                differs("bridge", rung.bridges(), same.bridges(), differences);
                differs("visit", rung.visit(), same.visit(), differences);
                differs("steps after a rung", List.of(rung.follows(), rung.corrections()), List.of(same.follows(), same.corrections()),
                        differences);
            });
        }
        return differences.stream().distinct().toList();
    }

    private static List<Double> minutes(Placed answer) {
        return List.of(answer.expected().best(), answer.expected().likely(), answer.expected().worst());
    }

    private static void differs(String what, Object one, Object other, List<String> differences) {
        if (!one.equals(other)) {
            differences.add("other " + what);
        }
    }

    @Test
    void a_named_deposit_is_answered_as_one_that_is_certain() {
        ALONE.none();
    }

    @Test
    void a_deposit_that_is_ruled_out_changes_nothing() {
        BESIDE.none();
    }

    @Test
    void after_a_failed_rung_they_are_still_the_same() {
        TRIED.none();
    }

    /** Two empty answers are alike too. */
    @Test
    void most_of_the_answers_compared_have_a_ladder() {
        assertThat(ALONE.percent()).isGreaterThanOrEqualTo(60);
        assertThat(TRIED.percent()).isGreaterThanOrEqualTo(60);
    }

    @Test
    void a_rung_that_is_missing_is_seen() {
        Placed tar = Placed.plain(UsualSpots.of("tar_spot", "clear_2k_sound", "P12D", ""));
        assertThat(differences(tar, tar)).isEmpty();
        assertThat(differences(tar, tar.with(tar.rungs().subList(1, tar.rungs().size())))).contains("other rungs");
        List<Placed.Offer> dearer = new ArrayList<>(tar.rungs());
        dearer.set(0, dearer.get(0).with(new Placed.Chance(0.5, 0.4, 0.6)));
        assertThat(differences(tar, tar.with(dearer))).containsExactly("other chance of a rung");
    }
}
