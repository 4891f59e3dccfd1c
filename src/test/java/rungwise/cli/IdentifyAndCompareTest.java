package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IdentifyAndCompareTest {
    @TempDir
    private Path folder;

    private record Ran(int code, String out, String err) {
    }

    private static synchronized Ran run(String... args) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream seen = new ByteArrayOutputStream();
        ByteArrayOutputStream wrong = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(seen, true, StandardCharsets.UTF_8));
            System.setErr(new PrintStream(wrong, true, StandardCharsets.UTF_8));
            int code = Main.run(args);
            return new Ran(code, seen.toString(StandardCharsets.UTF_8), wrong.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    @Test
    void the_verdict_is_the_first_line_and_a_check_or_its_absence_is_said() throws Exception {
        Ran ran = run("identify", file("a.yaml", "{observations: [v21], surface: clear_2k_sound, place: horizontals}"));
        assertThat(ran.code()).isZero();
        assertThat(ran.out().lines().findFirst().orElseThrow()).matches("(KNOWN|LIKELY|OPEN): .+");
        assertThat(ran.out()).contains("fallout_iron", "Check next: ", "Next: ");
    }

    @Test
    void every_demo_of_signs_is_identified() throws Exception {
        try (var files = Files.list(Path.of("demo-data/signs"))) {
            for (Path file : files.toList()) {
                assertThat(run("identify", file.toString()).code()).as(file.toString()).isZero();
            }
        }
    }

    @Test
    void a_mistyped_sign_exits_2_with_a_near_one() throws Exception {
        Ran ran = run("identify", file("a.yaml", "{observations: [colour_gray]}"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("/observations/0", "colour_grey");
    }

    @Test
    void a_ladder_for_signs_alone_says_what_it_may_be_first() throws Exception {
        Ran ran = run("ladder", file("a.yaml", "{observations: [v26, feel_sticky], surface: clear_2k_sound, whatIf: true}"));
        assertThat(ran.out()).startsWith("What it is was not said; by its signs it may be:").contains("sap_conifer");
    }

    @Test
    void two_spots_show_only_what_differs_and_the_rule_behind_it() throws Exception {
        Ran ran = run("compare", file("a.yaml", "{contaminant: tar_spot, surface: clear_2k_sound, age: P12D}"),
                file("b.yaml", "{contaminant: tar_spot, surface: lacquer_nitro_acrylic, age: P12D}"));
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("asked /surface: clear_2k_sound → lacquer_nitro_acrylic", "→ never", "now: ")
                .doesNotContain("asked /age");
    }

    @Test
    void two_revisions_of_knowledge_show_the_figure_that_moved() throws Exception {
        Path other = folder.resolve("knowledge");
        rungwise.knowledge.load.KnowledgeFiles.builtIn("knowledge").forEach((name, text) -> {
            try {
                Files.createDirectories(other.resolve(name).getParent());
                Files.writeString(other.resolve(name), name.equals("decisions.yaml")
                        ? text.replace("value: 240\n", "value: 20\n") : text);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        Ran ran = run("compare", file("a.yaml", "{contaminant: adhesive_residue, surface: clear_2k_sound, age: P12D}"),
                "--other-knowledge", other.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).contains("passed over, not-worth-its-minutes").doesNotContain("asked ", "→ never", "→ not now");
        assertThat(ran.out().lines().reduce((a, b) -> b).orElseThrow()).matches("Revision \\w+ → \\w+\\.");
    }

    @Test
    void what_differs_is_said_by_name_and_in_whole_sentences() throws Exception {
        String spots = "demo-data/spots/";
        String out = run("compare", spots + "baked-bird-dropping.yaml", spots + "resin-in-the-shade.yaml").out();
        assertThat(out).contains("gentler than the next one").contains("next: ");
        assertThat(out.lines().filter(l -> !l.startsWith("asked "))).noneMatch(l -> l.matches(".*([ (]-([ ;,)].*|$)|\\{|; \\)|\\(\\)).*"));
        assertThat(out.lines().filter(l -> l.matches("(next|way out|before|after): .*|.*(gate|needed first,) .*"))).isNotEmpty()
                .noneMatch(l -> l.matches(".*\\w_\\w.*") || l.endsWith("→ "));
    }

    @Test
    void the_same_question_twice_differs_in_nothing() throws Exception {
        assertThat(run("compare", file("a.yaml", "{contaminant: tar_spot, surface: clear_2k_sound}")).out())
                .startsWith("Nothing differs.");
    }

    @Test
    void a_side_that_is_wrong_exits_2_and_names_its_file() throws Exception {
        Ran ran = run("compare", file("a.yaml", "{contaminant: tar_spot}"), file("b.yaml", "{contaminant: tar_spt}"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("b.yaml", "tar_spot");
    }
}
