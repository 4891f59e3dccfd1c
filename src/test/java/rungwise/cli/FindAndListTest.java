package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

class FindAndListTest {
    private static String out(String... args) {
        StringWriter out = new StringWriter();
        CommandLine line = Main.commandLine().setOut(new PrintWriter(out));
        assertThat(line.execute(args)).isZero();
        return out.toString();
    }

    @Test
    void a_word_is_found_by_what_it_is_called() {
        assertThat(out("find", "bird", "poop")).startsWith("Deposits\n  bird_dropping  Bird dropping\n");
        assertThat(out("find", "Clear-Bra")).startsWith("Surfaces\n  ppf_tpu_gloss  ");
        assertThat(out("find", "iron_neutral")).contains("Methods\n  iron_neutral  Neutral iron remover");
    }

    @Test
    void a_word_finds_things_of_every_sort() {
        assertThat(out("find", "tar")).contains("Deposits\n  tar_spot  ").contains("Methods\n").contains("aliph_tar  ").contains("Signs\n");
    }

    @Test
    void a_word_too_wide_shows_how_to_tell() {
        assertThat(out("find", "alloy wheel")).contains("Surfaces, of which the word may mean several\n")
                .contains("  wheel_diamond_cut  Diamond-cut wheel: Fine turned lines");
        assertThat(out("find", "paint")).contains("single_stage_enamel").doesNotContain("ppf_tpu_gloss");
    }

    @Test
    void what_a_surface_or_a_wide_deposit_is_told_by_stands_beside_it() {
        assertThat(out("find", "shiny thing")).contains("  stainless  Stainless steel: Cold, with a greyer").contains("  chrome_plated_plastic  ");
        assertThat(out("find", "lether seet")).contains("  leather_coated  Coated leather: A drop of water stays on top");
        assertThat(out("find", "tree sap")).contains("  sap_conifer  Conifer resin: Clear amber bead");
        assertThat(out("list", "surfaces").lines()).allMatch(l -> l.matches("\\w+  [^:]+: .+\\."));
    }

    @Test
    void every_surface_says_how_to_tell_it() {
        assertThat(Base.advisor().knowledge().surfaces().values()).allSatisfy(s -> assertThat(s.tell()).as(s.id()).endsWith("."));
    }

    @Test
    void what_nobody_calls_anything_so_shows_what_is_near() {
        assertThat(out("find", "burd poop")).startsWith("Nothing is called \"burd poop\". Nearest are:\nDeposits\n  bird_dropping  ");
        assertThat(out("find", "qqqqqqq")).startsWith("Nothing is called \"qqqqqqq\", and nothing is near.");
    }

    @Test
    void found_things_are_json_too() {
        JsonNode found = Mappers.json().readTree(out("find", "wheel", "--json"));
        assertThat(found.path("asked").asString()).isEqualTo("wheel");
        assertThat(found.path("found").valueStream().filter(o -> o.path("how").asString().equals("may-be")).toList()).hasSizeGreaterThan(3);
    }

    @Test
    void a_list_holds_all_of_a_sort_by_id_and_name() {
        int signs = Base.advisor().knowledge().observations().size();
        assertThat(out("list", "deposits").lines()).hasSize(Base.advisor().knowledge().contaminants().size())
                .contains("bird_dropping  Bird dropping");
        assertThat(out("list", "surfaces").lines()).hasSize(Base.advisor().knowledge().surfaces().size());
        assertThat(out("list", "METHODS").lines()).contains("clay_fine  Fine clay");
        JsonNode listed = Mappers.json().readTree(out("list", "signs", "--json"));
        assertThat(listed.path("items")).hasSize(signs);
        assertThat(listed.path("revision").asString()).isEqualTo(Base.advisor().knowledge().revision());
    }

    @Test
    void an_unknown_sort_exits_2() {
        StringWriter err = new StringWriter();
        assertThat(Main.commandLine().setErr(new PrintWriter(err)).execute("list", "cars")).isEqualTo(2);
        assertThat(err.toString()).contains("cars").containsIgnoringCase("deposits");
    }
}
