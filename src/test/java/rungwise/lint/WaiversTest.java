package rungwise.lint;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungwise.Base;
import rungwise.answer.Advisor;
import rungwise.knowledge.draft.Fault;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.load.KnowledgeLoader;

/** What stands with a reason, for how long, and what becomes of a waiver that is left behind. */
class WaiversTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 12, 1);
    private static final String TAPE = "- {check: chance-against-chemistry, entry: wood_stain, reason: It flashes off"
            + " too soon., date: \"2026-01-31\"%s}%n";

    private static Lint.Report with(String waivers) {
        Map<String, String> files = new TreeMap<>(KnowledgeFiles.inFolder(Path.of("knowledge")));
        files.put("waivers.yaml", waivers);
        KnowledgeLoader.Loaded loaded = KnowledgeLoader.load(files, "test");
        assertThat(loaded.faults()).isEmpty();
        return new Lint(new Advisor(loaded.base().orElseThrow(), Base.advisor().rules().unfired()), TODAY)
                .report(c -> c.id().equals("chance-against-chemistry"), c -> false);
    }

    private static long ofTape(Lint.Report report) {
        return report.faults().stream().filter(f -> f.check().equals("chance-against-chemistry")
                && f.place().startsWith("wood_stain")).count();
    }

    @Test
    void nothing_is_found_in_what_is_shipped_but_what_stands_with_a_reason() {
        Lint.Report report = new Lint(Base.advisor(), TODAY).report();
        assertThat(report.faults()).isEmpty();
        assertThat(report.ladders()).isGreaterThan(500);
        assertThat(report.waived()).isNotEmpty().allSatisfy(w -> assertThat(w.toString()).contains("[" + w.fault().check()
                + "]", w.reason()));
    }

    @Test
    void what_is_waived_is_no_fault_and_without_the_waiver_it_is_one() {
        assertThat(ofTape(with("[]"))).isEqualTo(1);
        Lint.Report report = with(TAPE.formatted(""));
        assertThat(ofTape(report)).isZero();
        assertThat(report.waived()).hasSize(1);
    }

    @Test
    void a_waiver_that_names_a_method_waives_that_one_alone() {
        assertThat(ofTape(with(TAPE.formatted(", about: glycol_ether_graffiti")))).isZero();
        assertThat(ofTape(with(TAPE.formatted(", about: ester_solvent")))).isEqualTo(1);
    }

    @Test
    void a_waiver_counts_through_its_last_day_and_then_becomes_a_fault() {
        assertThat(ofTape(with(TAPE.formatted(", until: \"2026-12-01\"")))).isZero();
        Lint.Report over = with(TAPE.formatted(", until: \"2026-11-30\""));
        assertThat(ofTape(over)).isEqualTo(1);
        assertThat(over.faults()).extracting(Fault::toString).anySatisfy(f -> assertThat(f)
                .startsWith("waivers.yaml at chance-against-chemistry wood_stain: it ran until 2026-11-30"));
    }

    @Test
    void a_waiver_of_what_is_not_found_or_cannot_be_waived_is_a_fault() {
        Lint.Report report = with("""
                - {check: chance-against-chemistry, entry: tar_spot, reason: Nothing is wrong here., date: "2026-01-31"}
                - {check: dangling-id, entry: tar_spot, reason: It will exist one day., date: "2026-01-31"}
                """);
        assertThat(report.faults()).filteredOn(f -> f.check().equals("idle-waiver")).extracting(Fault::wrong)
                .containsExactly("it waives nothing: the check does not find this", "what dangling-id finds cannot be waived");
    }
}
