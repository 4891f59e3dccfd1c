package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class LogCommandTest {
    private static final String SPOT = "demo-data/spots/tar-on-sound-clear.yaml";

    @TempDir
    private Path folder;

    private record Ran(int code, String out, String err) {
    }

    private static Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Main.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        return new Ran(line.execute(args), out.toString(), err.toString());
    }

    private String data() {
        return folder.resolve("log").toString();
    }

    private Ran add(String name, String text) throws Exception {
        return run("log", "add", Files.writeString(folder.resolve(name), text).toString(), "--data", data());
    }

    @Test
    void attempts_are_kept_shown_written_out_and_taken_back_without_counting_twice() throws Exception {
        assertThat(add("a.yaml", "{contaminant: tar_spot, surface: clear_2k_sound, method: aliph_tar, outcome: cleared, "
                + "note: went well}").out()).contains("1 attempts kept");
        assertThat(add("b.csv", "contaminant,method,outcome,advised,notFollowedBecause\n"
                + "tar_spot,alc_gel,no-change,aliph_tar,not_at_hand;no_time\n").out()).contains("now holds 2");
        assertThat(run("log", "--data", data()).out()).contains("aliph_tar on tar_spot").contains("went well")
                .contains("not followed: not at hand, no time").contains("2 of 2 attempts");
        for (String form : new String[]{"--json", "--csv"}) {
            String out = run("log", form, "--data", data()).out();
            Ran again = add(form.equals("--csv") ? "out.csv" : "out.jsonl", out);
            assertThat(again.out()).as(again.err()).contains("0 attempts kept").contains("holds 2");
        }
    }

    @Test
    void the_demo_log_is_kept_and_teaches() {
        assertThat(run("log", "add", "demo-data/log.csv", "--data", data()).err()).isEmpty();
        String learned = run("learned", "--data", data()).out();
        assertThat(learned).contains("aliph_tar").contains("ALARM: acid_mild did harm on paint in 1 of 2 tries.")
                .contains("left out 1 on unprepared panels");
    }

    @Test
    void one_wrong_row_keeps_the_whole_file_out_and_exits_2() throws Exception {
        add("a.yaml", "{contaminant: tar_spot, method: aliph_tar, outcome: cleared}");
        Ran ran = add("b.csv", "contaminant,method,outcome\ntar_spot,alc_gel,no-change\ntar_spot,alc_gell,no-change\n");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("Nothing of").contains("row 3 /method").contains("alc_gel");
        assertThat(run("log", "--data", data()).out()).contains("1 of 1");
    }

    @Test
    void a_log_that_is_not_there_is_not_made_by_looking() {
        for (String[] command : new String[][]{{"log", "--data", data()}, {"learned", "--data", data()},
            {"ladder", SPOT, "--data", data()}}) {
            Ran ran = run(command);
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err()).contains("there is no log in");
        }
        assertThat(folder.resolve("log")).doesNotExist();
    }

    @Test
    void a_ladder_uses_the_log_says_so_and_can_be_told_not_to() throws Exception {
        add("a.csv", "contaminant,age,surface,method,outcome\n" + "tar_spot,P12D,clear_2k_sound,aliph_tar,no-change\n".repeat(9)
                + "tar_spot,P12D,clear_2k_sound,aliph_tar,harm\n");
        String prior = run("ladder", SPOT, "--json").out();
        String learned = run("ladder", SPOT, "--json", "--data", data()).out();
        assertThat(learned).isNotEqualTo(prior).contains("\"learned\"");
        assertThat(run("ladder", SPOT, "--why", "aliph_tar", "--data", data()).out())
                .contains("The log of this shop moved the chance.");
        assertThat(run("ladder", SPOT, "--json", "--data", data(), "--no-learning").out()).isEqualTo(prior);
        assertThat(run("learned", "--data", data()).out()).contains("ALARM: aliph_tar did harm on paint in 1 of 10 tries.")
                .contains("bituminous").contains("10 attempts counted");
    }

    @Test
    void a_spot_that_nobody_named_uses_the_log_and_can_be_told_not_to() throws Exception {
        add("a.csv", "contaminant,age,surface,method,outcome\n" + "sap_conifer,P5D,clear_2k_sound,alc_gel,no-change\n".repeat(9));
        String spot = Files.writeString(folder.resolve("spot.yaml"), "{observations: [near_conifers, form_beads, water_no_change], "
                + "age: P5D, surface: clear_2k_sound, setting: {panelC: 18, sun: shade}}").toString();
        String prior = run("ladder", spot, "--json").out();
        assertThat(run("ladder", spot, "--json", "--data", data()).out()).isNotEqualTo(prior).contains("\"learned\"");
        assertThat(prior).doesNotContain("\"learned\"");
        assertThat(run("ladder", spot, "--json", "--data", data(), "--no-learning").out()).isEqualTo(prior);
    }

    @Test
    void what_moved_is_printed_as_a_table_to_draw_from() throws Exception {
        add("a.csv", "contaminant,age,surface,method,outcome,minutes\n" + "tar_spot,P3000D,clear_2k_sound,aliph_tar,no-change,2\n".repeat(6));
        List<String> rows = run("learned", "--csv", "--data", data()).out().lines().toList();
        assertThat(rows.get(0)).isEqualTo("what,method,bond,state,surface,from,to,tries,cleared");
        assertThat(rows).filteredOn(r -> r.startsWith("chance,")).singleElement().satisfies(r -> {
            String[] cells = r.split(",");
            assertThat(cells).startsWith("chance", "aliph_tar", "bituminous", "hardened", "paint");
            assertThat(Double.parseDouble(cells[6])).isLessThan(Double.parseDouble(cells[5]));
            assertThat(Double.parseDouble(cells[7])).isEqualTo(6);
        });
        assertThat(rows).filteredOn(r -> r.startsWith("minutes,")).singleElement().asString().startsWith("minutes,aliph_tar,,,,").endsWith(",6,");
    }

    @Test
    void a_chance_is_an_estimate_until_it_was_tried_twenty_times_a_count_until_fifty_then_a_number() throws Exception {
        assertThat(run("ladder", SPOT, "--all").out()).contains("trade estimates, 0 tries here").doesNotContain(" % ,");
        String row = "tar_spot,P12D,clear_2k_sound,aliph_tar,";
        add("a.csv", "contaminant,age,surface,method,outcome\n" + (row + "cleared\n").repeat(14) + (row + "no-change\n").repeat(5));
        assertThat(run("ladder", SPOT, "--all", "--data", data()).out()).contains("by 19 tries here");
        add("b.csv", "contaminant,age,surface,method,outcome\n" + row + "no-change\n");
        assertThat(run("ladder", SPOT, "--all", "--data", data()).out()).contains("14 of 20 here").doesNotContain("%, 14");
        add("c.csv", "contaminant,age,surface,method,outcome\n" + (row + "cleared\n").repeat(30));
        assertThat(run("ladder", SPOT, "--all", "--data", data()).out()).contains("%, 44 of 50 here");
    }
}
