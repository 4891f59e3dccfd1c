package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class CommandLineTest {
    private record Ran(int code, String out, String err) {
    }

    private static synchronized Ran run(String input, String... args) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        InputStream in = System.in;
        ByteArrayOutputStream seen = new ByteArrayOutputStream();
        ByteArrayOutputStream wrong = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(seen, true, StandardCharsets.UTF_8));
            System.setErr(new PrintStream(wrong, true, StandardCharsets.UTF_8));
            System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
            int code = Main.run(args);
            return new Ran(code, seen.toString(StandardCharsets.UTF_8), wrong.toString(StandardCharsets.UTF_8));
        } finally {
            System.setOut(out);
            System.setErr(err);
            System.setIn(in);
        }
    }

    @Test
    void the_next_step_is_the_first_line() {
        Ran ran = run("{contaminant: tar_spot, age: P12D, surface: clear_2k_sound}", "ladder", "-");
        assertThat(ran.code()).isZero();
        assertThat(ran.out().lines().findFirst().orElseThrow()).matches("[A-Z]+ +[A-Z][a-z].+\\.");
    }

    @Test
    void why_not_clay_has_an_answer() {
        Ran ran = run("{contaminant: sap_conifer, age: P21D, surface: clear_2k_sound}", "ladder", "-", "--why",
                "clay_fine");
        assertThat(ran.out()).contains("Fine clay is passed over, pointless").contains("decisions/pointless");
    }

    @Test
    void every_removal_method_has_an_answer_to_why() {
        for (String method : rungwise.Base.advisor().knowledge().methods().values().stream()
                .filter(m -> m.kind() == rungwise.knowledge.method.MethodKind.REMOVE).map(m -> m.id()).toList()) {
            assertThat(CaseFile.why(rungwise.Base.ask("{contaminant: sap_conifer, age: P21D, surface: wrap_gloss}"),
                    method)).as(method).isNotEqualTo("it is nowhere");
        }
    }

    @Test
    void a_wrong_question_exits_2_and_says_where() {
        Ran ran = run("{contaminant: tar_spott, age: -P1D, surface: clear_2k_sound}", "ladder", "-");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("/contaminant").contains("tar_spot").contains("/age");
    }

    @Test
    void a_typo_in_a_field_exits_2_and_suggests_the_field() {
        Ran ran = run("{contaminent: tar_spot}", "ladder", "-");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("/contaminent").contains("did you mean contaminant");
    }

    @Test
    void a_missing_file_and_broken_text_exit_2() {
        assertThat(run("", "ladder", "nowhere.yaml").code()).isEqualTo(2);
        assertThat(run("{a: [", "ladder", "-").code()).isEqualTo(2);
        assertThat(run("[".repeat(5000), "ladder", "-").code()).isEqualTo(2);
        assertThat(run("x".repeat(1_200_000), "ladder", "-").err()).contains("larger than 1 MB");
    }

    @Test
    void check_finds_no_fault_in_what_is_shipped() {
        Ran ran = run("", "check");
        assertThat(ran.out()).contains("No fault");
        assertThat(ran.code()).isZero();
    }

    @Test
    void a_check_explains_itself_and_an_unknown_one_is_named() {
        Ran ran = run("", "check", "--explain", "dwell");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("dwell: ").contains("Wrong:", "usual: 10", "Right:");
        Ran unknown = run("", "check", "--explain", "dwel");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("no check \"dwel\"", "contradicting-rules");
    }

    @Test
    void check_exits_1_and_names_the_fault_of_a_broken_folder() throws Exception {
        Path folder = Files.createTempDirectory("knowledge");
        rungwise.knowledge.load.KnowledgeFiles.builtIn("knowledge").forEach((name, text) -> {
            try {
                Path file = folder.resolve(name);
                Files.createDirectories(file.getParent());
                Files.writeString(file, name.equals("gates.yaml") ? text.replace("id: mask", "id: masque") : text);
            } catch (java.io.IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
        Ran ran = run("", "--knowledge", folder.toString(), "check");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("\"mask\" does not exist");
    }

    @Test
    void every_demo_spot_is_answered() throws Exception {
        try (var files = Files.list(Path.of("demo-data/spots"))) {
            for (Path file : files.toList()) {
                assertThat(run("", "ladder", file.toString()).code()).as(file.toString()).isZero();
            }
        }
    }

    private static void described(CommandLine command, List<String> mute) {
        command.getCommandSpec().args().stream().filter(arg -> String.join("", arg.description()).isBlank() && !arg.inherited())
                .forEach(arg -> mute.add(command.getCommandSpec().qualifiedName() + " " + arg.paramLabel()));
        command.getSubcommands().values().forEach(below -> described(below, mute));
    }

    @Test
    void the_help_of_a_command_says_of_all_that_it_takes_what_it_is() {
        List<String> mute = new ArrayList<>();
        described(Main.commandLine(), mute);
        assertThat(mute).isEmpty();
    }

    @Test
    void a_port_that_is_none_exits_2() {
        for (String port : new String[] {"-1", "65536", "http"}) {
            Ran ran = run("", "serve", "--port", port);
            assertThat(ran.code()).as(port).isEqualTo(2);
            assertThat(ran.err()).as(port).contains("--port");
        }
    }
}
