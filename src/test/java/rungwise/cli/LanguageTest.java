package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A second language is a file: the program itself, as a process of its own, is given one and answers in it. */
class LanguageTest {
    private static final String SPOT = "demo-data/spots/tar-on-sound-clear.yaml";
    private static final String GERMAN = "# so viel, wie ein Test braucht\ntext.assumed = Angenommen\ntext.end = Zuerst gilt das "
            + "Sicherheitsdatenblatt. Stand {revision}.\nhelp.rungwise.ladder.all = alles dazu, auch was wegfällt\n";

    @TempDir
    private Path folder;

    private record Ran(int code, String out) {
    }

    private Ran run(String setting, List<String> machine, String... args) throws Exception {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-Dstdout.encoding=UTF-8", "-Dstderr.encoding=UTF-8", "-Dfile.encoding=UTF-8"));
        command.addAll(machine);
        command.addAll(List.of("-cp", folder + File.pathSeparator + System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().remove("RUNGWISE_LANG");
        if (!setting.isEmpty()) {
            builder.environment().put("RUNGWISE_LANG", setting);
        }
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), out);
    }

    private Path file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    @Test
    void a_language_on_the_class_path_answers_where_the_machine_speaks_it_and_leaves_the_rest_english() throws Exception {
        file("messages/de.properties", GERMAN);
        file("messages/de_AT.properties", "text.assumed = Anzunehmen\n");
        Ran ran = run("", List.of("-Duser.language=de", "-Duser.country=AT"), "ladder", SPOT, "--all");
        assertThat(ran.out()).contains("\nAnzunehmen\n", "Zuerst gilt das Sicherheitsdatenblatt. Stand ", "Ladder, gentlest first")
                .doesNotContain("Safety data sheets, local codes");
        assertThat(ran.code()).isZero();
    }

    @Test
    void a_setting_names_a_language_or_any_file_whatever_the_machine_speaks() throws Exception {
        file("messages/de.properties", GERMAN);
        Path mine = file("mine.properties", "help.rungwise.ladder.all = all of it\n");
        List<String> english = List.of("-Duser.language=en");
        assertThat(run("de_DE.UTF-8", english, "ladder", "--help").out()).contains("alles dazu, auch was wegfällt", "say where this method went");
        assertThat(run(mine.toString(), english, "ladder", "--help").out()).contains("  all of it", "say where this method went");
    }

    @Test
    void a_machine_whose_language_has_no_file_hears_english() throws Exception {
        Ran ran = run("", List.of("-Duser.language=de", "-Duser.country=DE"), "ladder", "--help");
        assertThat(ran.out()).contains("Answer a spot: what to try next, and why.");
        assertThat(ran.code()).isZero();
    }

    @Test
    void a_language_without_a_file_and_a_sentence_that_names_what_is_not_given_are_told_at_the_start() throws Exception {
        Ran none = run("tlh", List.of(), "--help");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.out()).contains("RUNGWISE_LANG", "tlh", "name one that has a file");
        Ran gone = run(folder.resolve("gone.properties").toString(), List.of(), "--help");
        assertThat(gone.code()).isEqualTo(2);
        assertThat(gone.out()).contains("gone.properties cannot be read");
        Ran wrong = run(file("wrong.properties", "text.end = Stand {stand}.\n").toString(), List.of(), "--help");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.out()).contains("text.end", "stand", "revision");
    }
}
