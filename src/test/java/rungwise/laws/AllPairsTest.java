package rungwise.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rungwise.Base;
import rungwise.answer.Advisor;

/**
 * The laws over all that the sweep leaves alone: readings, ages of paint, consent, shelf, tries, neighbours, people,
 * weather and what was not told, each value with each value of every other at least once. A spot that has no two rungs on
 * a plain day puts nothing to the test here and is left to the sweep.
 */
class AllPairsTest {
    private static final int TELLING_RUNGS = 2;
    /** Of the answers that could put a law to the test, how many must, in percent. */
    private static final long LEAST_PERCENT = 25;
    private static final List<String> JUDGED = List.of("1", "2", "3", "5", "6 consent", "6 panel", "7 bridges", "8", "9", "12 bars",
            "14");
    private static final String BAR_GOES = "12 without bay a bar goes";
    private static final String GATE_GOES = "12 without bay a gate goes";
    private static final String PROTECTION_GOES = "12 without bay protection goes";

    @Test
    void no_law_is_broken_where_any_two_values_meet() {
        long start = System.nanoTime();
        RowLaws laws = new RowLaws(Base.advisor());
        Pairs pairs = pairs();
        List<int[]> rows = pairs.rows();
        assertThat(pairs.unmet(rows)).isEmpty();
        Map<String, Map<String, String>> broken = new ConcurrentSkipListMap<>();
        Map<String, Integer> times = new ConcurrentSkipListMap<>();
        sorted(rows).parallelStream().forEach(row -> laws.broken(row).keySet().forEach(law -> {
            times.merge(law, 1, Integer::sum);
            broken.merge(law, row, (a, b) -> RowLaws.sentence(a).compareTo(RowLaws.sentence(b)) <= 0 ? a : b);
        }));
        System.out.printf("array: %d rows hold %d pairs; %d ladders in %d s; answers with something to judge by law: %s%n",
                rows.size(), pairs.pairs(false).size() + pairs.pairs(true).size(), laws.ladders(),
                (System.nanoTime() - start) / 1_000_000_000L, laws.shares());
        List<String> smallest = broken.entrySet().stream().map(e -> {
            Map<String, String> small = laws.smallest(e.getValue(), e.getKey());
            return times.get(e.getKey()) + " rows break law " + e.getKey() + "; smallest: " + laws.broken(small).get(e.getKey())
                    + " in " + laws.text(small) + " (" + RowLaws.sentence(small) + ")";
        }).toList();
        assertThat(smallest).isEmpty();
        JUDGED.forEach(law -> assertThat(laws.percent(law))
                .as("answers that put law " + law + " to the test, in percent").isGreaterThanOrEqualTo(LEAST_PERCENT));
    }

    @Test
    void a_row_that_is_taken_away_leaves_pairs_unmet() {
        Pairs pairs = new Pairs(Dimensions.sizes(), Set.of(), Dimensions.muting());
        List<int[]> rows = pairs.rows();
        assertThat(pairs.unmet(rows)).isEmpty();
        List<int[]> fewer = new ArrayList<>(rows);
        fewer.remove(rows.size() / 2);
        assertThat(pairs.unmet(fewer)).isNotEmpty();
    }

    private static final Map<String, String> OZONE = spot("blood", "int_fabric_woven", "consent", "granted", "sun",
            "sun: direct");

    /** One rule less, and the law that misses it. */
    static Stream<Arguments> breaks() {
        return Stream.of(
                Arguments.of("ask-bay-for-ozone", BAR_GOES, OZONE),
                Arguments.of("ask-bay-for-vapour-over-limit", GATE_GOES, spot("exhaust_soot", "clear_2k_sound")),
                // few enough spots that the gas stays under its limit: only its kind speaks
                Arguments.of("ask-bay-for-fumes-without-cartridge", GATE_GOES, spot("coffee_tea", "carpet", "extent", "{spots: 20, diameterMm: 4}")),
                Arguments.of("solvent-protection-until-bay-told", PROTECTION_GOES, spot("tar_spot", "clear_2k_sound")),
                Arguments.of("respirator-until-bay-told", PROTECTION_GOES, spot("tar_spot", "clear_2k_sound")),
                Arguments.of("cartridge-until-bay-told", PROTECTION_GOES, spot("water_spot_mineral", "clear_2k_sound", "extent",
                        "{spots: 20, diameterMm: 4}")),
                Arguments.of("ask-panel-temperature", "12 without panel a bar goes", spot("tar_spot", "clear_2k_sound", "left out", "panel")),
                Arguments.of("ask-sun-on-panel", "12 without sun a bar goes", spot("tar_spot", "clear_2k_sound", "left out", "sun")),
                Arguments.of("alkali-and-acid", "7 bridges after another agent", spot("water_spot_mineral", "clear_2k_sound")));
    }

    @ParameterizedTest(name = "without rule {0} law {1}")
    @MethodSource("breaks")
    void one_rule_less_is_seen(String rule, String law, Map<String, String> row) {
        assertThat(new RowLaws(Base.advisor()).broken(row)).isEmpty();
        assertThat(without(rule).broken(row)).containsKey(law);
    }

    @Test
    void a_failing_row_is_cut_down_to_what_fails() {
        Map<String, String> row = new LinkedHashMap<>(OZONE);
        row.put("workers", "[{level: L4}]");
        row.put("neighbour", "pmma_lens");
        row.put("clear", "clearMicrons: 42");
        Map<String, String> small = without("ask-bay-for-ozone").smallest(row, BAR_GOES);
        assertThat(small).containsEntry("workers", "").containsEntry("neighbour", "").containsEntry("clear", "")
                .containsEntry("contaminant", "blood").containsEntry("left out", "bay");
    }

    private static RowLaws without(String rule) {
        return new RowLaws(new Advisor(Base.advisor().knowledge(), Base.advisor().rules().without(rule)));
    }

    private static Map<String, String> spot(String contaminant, String surface, String... more) {
        Map<String, String> row = new LinkedHashMap<>(Dimensions.plain());
        row.put("contaminant", contaminant);
        row.put("surface", surface);
        row.put("left out", "bay");
        for (int i = 0; i < more.length; i += 2) {
            row.put(more[i], more[i + 1]);
        }
        return row;
    }

    private static Pairs pairs() {
        Set<Pairs.Pair> mute = Dimensions.mute(row -> Base.ask(Dimensions.question(row, "")).rungs().size()
                >= TELLING_RUNGS);
        return new Pairs(Dimensions.sizes(), mute, Dimensions.muting());
    }

    /** By surface, so that what stands on one surface is worked out once and still at hand. */
    private static List<Map<String, String>> sorted(List<int[]> rows) {
        return rows.stream().map(Dimensions::row).sorted(Comparator.comparing((Map<String, String> r) -> r.get("surface"))
                .thenComparing(r -> r.get("stricter"))).toList();
    }
}
