package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SpotCommandTest {
    private static final String SPOT = "demo-data/spots/tar-on-sound-clear.yaml";

    @TempDir
    private Path folder;

    private record Ran(int code, String out, String err) {
        JsonNode json() {
            assertThat(code).as(err).isZero();
            return new JsonMapper().readTree(out);
        }
    }

    private Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Main.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
        return new Ran(line.execute(args), out.toString(), err.toString());
    }

    private Ran spot(String... args) {
        String[] all = new String[args.length + 3];
        all[0] = "spot";
        System.arraycopy(args, 0, all, 1, args.length);
        all[args.length + 1] = "--data";
        all[args.length + 2] = data();
        return run(all);
    }

    private String data() {
        return folder.resolve("log").toString();
    }

    private String kept() {
        return spot("new", SPOT, "--json").json().path("id").asString();
    }

    @Test
    void a_spot_is_kept_and_its_card_says_how_to_go_on() {
        Ran ran = spot("new", SPOT);
        assertThat(ran.code()).as(ran.err()).isZero();
        String id = ran.out().split(" ")[1];
        assertThat(ran.out()).startsWith("Spot " + id + " is kept in " + data()).contains("PREPARE  Aliphatic tar remover.")
                .contains("rungwise spot try " + id + " aliph_tar OUTCOME");
        assertThat(ran.out().lines().count()).isLessThanOrEqualTo(Card.PAGE + 2);
        Ran show = spot("show", id);
        assertThat(show.out()).startsWith("Spot " + id + ", kept 20").contains("  contaminant: tar_spot\n").contains("  setting panelC: 18\n")
                .contains("  done: washed, dried\n").contains("Nothing has been tried on it since.").contains("PREPARE  Aliphatic tar remover.");
    }

    @Test
    void a_mark_that_shows_is_said_first_and_its_ladder_follows() {
        String id = kept();
        Ran ran = spot("try", id, "clay_medium", "marked");
        assertThat(ran.out()).as(ran.err()).startsWith("Kept on spot " + id + ": clay_medium, marked.").contains("OFF      The deposit is off (Tar spots), and a mark")
                .contains("PREPARE  Finishing polish by hand.").contains("rungwise spot try " + id + " hand_polish_fine OUTCOME");
        assertThat(run("log", "--data", data()).out()).contains("clay_medium on tar_spot, clear_2k_sound: marked");
    }

    @Test
    void a_try_is_in_the_log_and_on_the_spot_and_the_next_card_is_another() {
        String id = kept();
        Ran ran = spot("try", id, "Aliphatic tar remover", "no-change", "--minutes", "6", "--dwell", "3", "--done", "taped off,photo",
                "--note", "came back warm", "--bay", "2");
        assertThat(ran.out()).as(ran.err()).startsWith("Kept on spot " + id + ": aliph_tar, no-change.").contains("Neat terpene.")
                .contains("rungwise spot try " + id + " terpene_neat OUTCOME");
        assertThat(run("log", "--data", data()).out()).contains("aliph_tar on tar_spot, clear_2k_sound: no-change").contains("came back warm")
                .contains("1 of 1 attempts");
        assertThat(run("learned", "--data", data()).out()).contains("1 attempts counted");
        assertThat(spot("show", id).out()).contains("  aliph_tar: no-change\n    left on it 3 min\n").contains("done: washed, dried, masked, photographed")
                .contains("Neat terpene.");
        JsonNode shown = spot("show", id, "--json").json();
        assertThat(shown.at("/attempts/0/minutes").asDouble()).isEqualTo(6);
        assertThat(shown.at("/question/tried/0/dwellMinutes").asDouble()).isEqualTo(3);
        assertThat(shown.at("/answer/next/method").asString()).isEqualTo("terpene_neat");
    }

    @Test
    void every_field_of_an_attempt_can_be_told_with_a_try() {
        JsonNode attempt = spot("try", kept(), "aliph_tar", "partly", "--unprepared", "--advised", "terpene_neat", "--because",
                "not_at_hand,no_time", "--at", "2026-05-04T09:30:00+02:00", "--shop", "Yard 2", "--photo", "shots/17.jpg", "--json")
                .json().path("attempt");
        assertThat(attempt.path("prepared").asBoolean()).isFalse();
        assertThat(attempt.path("advised").asString()).isEqualTo("terpene_neat");
        assertThat(attempt.path("notFollowedBecause").toString()).isEqualTo("[\"not_at_hand\",\"no_time\"]");
        assertThat(attempt.path("at").asString()).isEqualTo("2026-05-04T07:30:00Z");
        assertThat(attempt.path("shop").asString()).isEqualTo("Yard 2");
        assertThat(attempt.path("photo").asString()).isEqualTo("shots/17.jpg");
    }

    @Test
    void a_stop_sign_is_shown_and_stops_the_spot() {
        String id = kept();
        assertThat(spot("try", id, "aliph_tar", "no-change", "--sign", "whitening").out()).contains("STOP     ");
        assertThat(spot("show", id).out()).contains("seen: whitening").contains("STOP     ");
    }

    @Test
    void what_became_known_is_told_and_counts() {
        String id = kept();
        Ran told = spot("tell", id, "facts.clearMicrons=41", "done=cooled down, taped off", "consent.granted=aliph_tar", "age=3 weeks");
        assertThat(told.out()).as(told.err()).startsWith("Kept on spot " + id);
        assertThat(spot("show", id).out()).contains("facts clearMicrons: 41").contains("done: washed, dried, cooled, masked").contains("age: P21D")
                .contains("consent granted: aliph_tar");
        assertThat(spot("tell", id, "facts.clearMicrons=null").code()).isZero();
        assertThat(spot("show", id).out()).doesNotContain("clearMicrons");
    }

    @Test
    void what_is_wrong_exits_2_and_says_what_to_do() throws Exception {
        String id = kept();
        String wrong = Files.writeString(folder.resolve("wrong.yaml"), "{contaminant: tarr, surface: clear_2k_sound}").toString();
        assertThat(spot("new", wrong)).isEqualTo(run("ladder", wrong));
        assertThat(spot("new", wrong).code()).isEqualTo(2);
        Ran attempt = spot("try", id, "aliph_tarr", "gone", "--dwell", "-3");
        assertThat(attempt.code()).isEqualTo(2);
        assertThat(attempt.err()).contains("Nothing was kept on spot " + id).contains("/method").contains("/outcome").contains("/dwellMinutes");
        for (String fact : new String[]{"washed", "=washed", "done=", "done=[", "dne=washed", "done=polishd", "tried=[]"}) {
            Ran told = spot("tell", id, fact);
            assertThat(told.code()).as(fact + told.err()).isEqualTo(2);
            assertThat(told.err()).as(fact).isNotBlank();
        }
        assertThat(run("log", "--data", data()).out()).contains("0 of 0");
        assertThat(spot("show", id, "--why", "no such thing").code()).isEqualTo(2);
    }

    @Test
    void an_unknown_spot_and_a_log_that_is_not_there_say_what_next() {
        Ran none = spot("show", "d2d2d2");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("there is no log in").contains("rungwise spot new FILE");
        assertThat(folder.resolve("log")).doesNotExist();
        kept();
        for (Ran ran : new Ran[]{spot("show", "d2d2d2"), spot("try", "d2d2d2", "aliph_tar", "partly"), spot("tell", "d2d2d2", "done=washed")}) {
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err()).contains("there is no spot \"d2d2d2\"").contains("rungwise spot new FILE");
        }
    }

    @Test
    void all_of_a_spots_answer_and_the_why_of_a_method_can_be_shown() {
        String id = kept();
        assertThat(spot("show", id.toUpperCase(), "--all").out()).contains("Spot " + id).contains("Safety data sheets")
                .hasSizeGreaterThan(spot("show", id).out().length());
        assertThat(spot("show", id, "--why", "fine clay").out()).isEqualTo(run("ladder", SPOT, "--why", "fine clay").out());
    }

    @Test
    void a_spot_known_by_its_signs_says_what_it_may_be_and_what_if_is_answered_once() throws Exception {
        String signs = Files.writeString(folder.resolve("signs.yaml"), "{observations: [near_conifers, form_beads, water_no_change], age: P5D, "
                + "surface: clear_2k_sound, setting: {panelC: 18, sun: shade}, whatIf: true}").toString();
        String beside = run("ladder", signs).out();
        Ran ran = spot("new", signs);
        assertThat(ran.out()).as(ran.err()).contains("by its signs it may be:").contains("What if ");
        assertThat(ran.out().lines().filter(l -> l.startsWith("What if")).toList()).isEqualTo(beside.lines().filter(l -> l.startsWith("What if")).toList());
        String id = ran.out().split(" ")[1];
        assertThat(spot("show", id).out()).contains("by its signs it may be:").doesNotContain("What if ");
        assertThat(spot("show", id, "--all").out()).contains("by its signs it may be:");
    }

    @Test
    void open_spots_are_listed_with_what_was_tried_last() {
        String one = kept();
        String other = kept();
        spot("try", one, "aliph_tar", "partly");
        Ran list = spot("list");
        assertThat(list.code()).as(list.err()).isZero();
        assertThat(list.out().lines().toList()).hasSize(5).satisfies(lines -> {
            assertThat(lines.get(0)).matches(one + "  tar_spot on clear_2k_sound, since 20.+Z");
            assertThat(lines.get(1)).matches(" +last aliph_tar: partly, 20.+Z");
            assertThat(lines.get(3)).contains("Nothing has been tried");
            assertThat(lines.get(4)).startsWith("2 open in " + data());
        });
        spot("try", one, "aliph_tar", "cleared");
        assertThat(spot("list").out()).contains(other).doesNotContain(one);
        assertThat(spot("list", "--all").out()).contains(other).contains(one).contains("2 in " + data());
        JsonNode all = spot("list", "--all", "--json").json().path("items");
        assertThat(all.path(0).path("open").asBoolean()).isFalse();
        assertThat(all.path(0).at("/last/outcome").asString()).isEqualTo("cleared");
        spot("try", other, "aliph_tar", "cleared");
        assertThat(spot("list").out()).startsWith("No spot is open in ").contains("rungwise spot new FILE");
    }

    @Test
    void a_mistyped_try_is_taken_back_and_the_log_says_so() {
        String id = kept();
        String first = spot("try", id, "aliph_tar", "partly", "--json").json().at("/attempt/id").asString();
        spot("try", id, "aliph_tar", "harm", "--done", "masked", "--note", "edge came up");
        Ran undone = spot("undo", id, "--why", "the spot beside it", "--by", "Yard 2");
        assertThat(undone.code()).as(undone.err()).isZero();
        assertThat(undone.out()).startsWith("Taken back from spot " + id + ": aliph_tar, harm").contains("What was told with it went too: done")
                .contains("rungwise spot try " + id);
        assertThat(spot("show", id).out()).contains("aliph_tar: harm, which counts no longer").contains("by Yard 2: the spot beside it")
                .contains(first.substring(0, 8)).contains("done: washed, dried\n");
        assertThat(run("log", "--data", data()).out()).contains("taken back 20").contains("by Yard 2: the spot beside it").contains("2 of 2");
        assertThat(run("log", "--json", "--data", data()).out().lines().toList()).as("what goes to another log").hasSize(1);
        assertThat(run("learned", "--data", data()).out()).contains("1 attempts counted").doesNotContain("harm");
        assertThat(spot("undo", id, first.substring(0, 8), "--why", "as well").out()).contains(": aliph_tar, partly");
        Ran nothing = spot("undo", id, "--why", "x");
        assertThat(nothing.code()).isEqualTo(2);
        assertThat(nothing.err()).contains("nothing has been tried on spot " + id);
        Ran unknown = spot("undo", id, "ffff", "--why", "x");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("Nothing was taken back from spot " + id).contains("no attempt \"ffff\"");
        assertThat(spot("undo", id).code()).as("without a why").isEqualTo(2);
    }

    @Test
    void a_try_without_signs_says_nothing_of_signs() {
        String id = kept();
        assertThat(spot("try", id, "aliph_tar", "partly", "--dwell", "3").code()).isZero();
        assertThat(spot("show", id).out()).doesNotContain("seen:");
        assertThat(spot("show", id, "--json").json().at("/question/tried/0").has("signs")).isFalse();
    }

    /** ESC and BEL, the one-byte CSI, and what turns the reading round. */
    @Test
    void what_was_typed_never_steers_the_terminal() throws Exception {
        String id = kept();
        String bad = "\u001b]0;x\u0007\u009b31m\u202e";
        for (Ran ran : new Ran[] {spot("show", bad), spot("tell", bad, "done=washed"), spot("tell", id, bad), spot("tell", id, bad + "=1"),
            spot("tell", id, "done=" + bad), spot("try", bad, "aliph_tar", "partly"), spot("try", id, bad, bad), spot("try", id, "aliph_tar", "partly", "--at", bad),
            spot("undo", id, bad, "--why", "x"), spot("undo", bad, "--why", "x"), spot("new", bad), spot("show", id, "--why", bad), spot("show", id, "--" + bad),
            spot("try", id, "aliph_tar", "partly", "--minutes", bad), spot(bad), run(bad), run("ladder", bad), run("ladder", SPOT, "--data", bad),
            run("log", "--data", bad), run("list", bad), run("check", "--explain", bad), run("--overlay", bad, "ladder", SPOT), run("log", "add", bad, "--data", data()),
            run("cases", bad), run("compare", bad)}) {
            assertThat(ran.code()).as(ran.err()).isEqualTo(2);
            assertThat(ran.out() + ran.err()).isNotBlank().doesNotContainPattern("[\\p{Cc}\\p{Cf}&&[^\\n\\t]]");
        }
        spot("try", id, "aliph_tar", "partly", "--note", "warm \u202e\u009b2J");
        for (Ran ran : new Ran[] {spot("show", id), run("log", "--data", data())}) {
            assertThat(ran.out()).contains("warm \\u202e\\u009b2J").doesNotContain("\u009b");
        }
    }

    @Test
    void a_place_that_can_hold_no_log_is_wrong_input_and_a_log_that_fails_is_not() throws Exception {
        String file = Files.writeString(folder.resolve("file"), "x").toString();
        for (String place : new String[] {"", " ", file, file + "/below", "jdbc:other:x", "a\0b"}) {
            for (Ran ran : new Ran[] {run("spot", "new", SPOT, "--data", place), run("spot", "list", "--data", place), run("log", "add",
                    SPOT, "--data", place)}) {
                assertThat(ran.code()).as(place + ran.err()).isEqualTo(2);
                assertThat(ran.err()).as(place).isNotBlank().doesNotContain("Exception");
            }
        }
        Path broken = Files.createDirectories(folder.resolve("broken"));
        Files.writeString(broken.resolve("attempts.db"), "this is no database at all".repeat(100));
        assertThat(run("spot", "list", "--data", broken.toString()).code()).as("a log that is there and cannot be read").isEqualTo(1);
    }
}
