package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that starts the program, with a jar beside it that only says how it was started. */
class LauncherTest {
    private static final Path SCRIPT = Path.of("src/main/launcher/rungwise");
    private static final Path SHELL = Path.of("/bin/sh");

    @TempDir
    private Path folder;

    /** What lies in the jar. */
    public static final class Told {
        public static void main(String[] args) {
            System.out.println("folder " + Path.of("").toAbsolutePath());
            List.of(args).forEach(a -> System.out.println("[" + a + "]"));
            java.lang.management.ManagementFactory.getRuntimeMXBean().getInputArguments().forEach(a -> System.out.println("flag " + a));
            System.exit(args.length == 0 ? 0 : 7);
        }
    }

    private record Ran(int code, String said) {
    }

    @BeforeEach
    void there_is_a_shell() throws IOException {
        assumeTrue(Files.isExecutable(SHELL), "no /bin/sh here");
        Files.createDirectories(folder.resolve("in stalled"));
        Files.copy(SCRIPT, folder.resolve("in stalled/rungwise"));
        Files.setPosixFilePermissions(folder.resolve("in stalled/rungwise"), PosixFilePermissions.fromString("rwxr-xr-x"));
        jar(folder.resolve("in stalled/rungwise.jar"));
    }

    private static void jar(Path file) throws IOException {
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Told.class.getName());
        String entry = Told.class.getName().replace('.', '/') + ".class";
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(file), manifest);
                InputStream in = Told.class.getClassLoader().getResourceAsStream(entry)) {
            jar.putNextEntry(new JarEntry(entry));
            in.transferTo(jar);
        }
    }

    private Ran run(Path from, Map<String, String> environment, String... command) throws Exception {
        ProcessBuilder process = new ProcessBuilder(command).directory(from.toFile()).redirectErrorStream(true);
        process.environment().remove("JAVA_TOOL_OPTIONS");
        process.environment().put("JAVA_HOME", System.getProperty("java.home"));
        process.environment().put("XDG_CACHE_HOME", folder.resolve("kept").toString());
        process.environment().putAll(environment);
        Process started = process.start();
        started.getOutputStream().close();
        String said = new String(started.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(started.waitFor(), said);
    }

    private String script() {
        return folder.resolve("in stalled/rungwise").toString();
    }

    @Test
    void arguments_arrive_as_they_were_given_and_its_end_is_handed_on() throws Exception {
        Ran ran = run(folder, Map.of(), script(), "ladder", "two words.yaml", "", "a*b", "$HOME", "it's \"so\"");
        assertThat(ran.code()).isEqualTo(7);
        assertThat(ran.said()).contains("[ladder]\n[two words.yaml]\n[]\n[a*b]\n[$HOME]\n[it's \"so\"]\n")
                .contains("folder " + folder.toRealPath());
    }

    @Test
    void it_starts_through_links_and_from_any_folder() throws Exception {
        Path bin = Files.createDirectories(folder.resolve("bin"));
        Files.createSymbolicLink(bin.resolve("first"), Path.of("../in stalled/rungwise"));
        Files.createSymbolicLink(bin.resolve("run wise"), Path.of("first"));
        Path elsewhere = Files.createDirectories(folder.resolve("else where"));
        assertThat(run(elsewhere, Map.of(), bin.resolve("run wise").toString())).extracting(Ran::code).isEqualTo(0);
        assertThat(run(elsewhere, Map.of(), "../bin/first")).extracting(Ran::code).isEqualTo(0);
        assertThat(run(bin, Map.of("PATH", bin + ":" + System.getenv("PATH")), SHELL.toString(), "-c", "first x")).extracting(Ran::code).isEqualTo(7);
        assertThat(run(folder.resolve("in stalled"), Map.of(), SHELL.toString(), "rungwise")).extracting(Ran::code).isEqualTo(0);
    }

    @Test
    void every_start_is_quick_and_bounded_and_what_weighs_everything_has_more() throws Exception {
        assertThat(run(folder, Map.of(), script(), "ladder", "x").said()).contains("flag -XX:TieredStopAtLevel=1", "flag -Xmx256m");
        assertThat(run(folder, Map.of(), script(), "--knowledge", "k", "serve").said()).contains("[serve]", "flag -Xmx256m");
        assertThat(run(folder, Map.of(), script(), "check").said()).contains("flag -Xmx1g");
    }

    @Test
    void the_first_single_answer_leaves_an_archive_that_the_next_start_reads() throws Exception {
        assertThat(run(folder, Map.of(), script(), "serve").said()).doesNotContain("ArchiveClassesAtExit");
        Ran first = run(folder, Map.of(), script(), "ladder");
        assertThat(first.code()).isEqualTo(7);
        assertThat(first.said()).contains("[ladder]\n");
        try (Stream<Path> kept = Files.list(folder.resolve("kept/rungwise"))) {
            assertThat(kept).hasSize(1).allMatch(f -> f.toString().endsWith(".jsa"));
        }
        for (String command : List.of("ladder", "serve")) {
            Ran next = run(folder, Map.of(), script(), command);
            assertThat(next.code()).isEqualTo(7);
            assertThat(next.said()).contains("flag -XX:SharedArchiveFile=", "[" + command + "]\n");
        }
    }

    @Test
    void a_damaged_archive_or_no_room_for_one_costs_no_answer() throws Exception {
        run(folder, Map.of(), script(), "ladder");
        try (Stream<Path> kept = Files.list(folder.resolve("kept/rungwise"))) {
            for (Path archive : kept.toList()) {
                Files.delete(archive);
                Files.writeString(archive, "not an archive");
            }
        }
        Ran damaged = run(folder, Map.of(), script(), "ladder");
        assertThat(damaged.code()).isEqualTo(7);
        assertThat(damaged.said()).startsWith("folder ").contains("[ladder]\n");
        Path file = Files.writeString(folder.resolve("a file"), "");
        assertThat(run(folder, Map.of("XDG_CACHE_HOME", file.toString()), script(), "ladder").said()).startsWith("folder ").contains("[ladder]\n");
    }

    @Test
    void without_a_jar_it_says_how_to_build_it() throws Exception {
        Files.delete(folder.resolve("in stalled/rungwise.jar"));
        Ran ran = run(folder, Map.of(), script());
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.said()).startsWith("rungwise: there is no rungwise.jar beside ").contains("mvn -q -DskipTests package");
    }

    @Test
    void without_java_or_with_an_old_one_it_says_what_to_install() throws Exception {
        Path tools = Files.createDirectories(folder.resolve("tools"));
        for (String tool : List.of("dirname", "readlink", "sed", "head")) {
            Path found = List.of(Path.of("/usr/bin", tool), Path.of("/bin", tool)).stream().filter(Files::isExecutable).findFirst().orElseThrow();
            Files.createSymbolicLink(tools.resolve(tool), found);
        }
        Ran none = run(folder, Map.of("PATH", tools.toString(), "JAVA_HOME", ""), SHELL.toString(), script());
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.said()).startsWith("rungwise: there is no Java; install Java 17 or newer");

        List<String> olds = new ArrayList<>();
        for (String release : List.of("JAVA_VERSION=\"11.0.2\"\n", "JAVA_VERSION=\"1.8.0_402\"\n", "")) {
            Path old = Files.createDirectories(folder.resolve("old" + olds.size() + "/bin"));
            Path java = Files.writeString(old.resolve("java"), "#!/bin/sh\necho 'openjdk version \"1.8.0_402\"' >&2\n");
            Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
            if (!release.isEmpty()) {
                Files.writeString(old.resolveSibling("release"), release);
            }
            Ran ran = run(folder, Map.of("JAVA_HOME", old.getParent().toString()), script());
            assertThat(ran.code()).isEqualTo(2);
            olds.add(ran.said());
        }
        assertThat(olds).allMatch(s -> s.contains("install Java 17 or newer, or set JAVA_HOME"));
        assertThat(olds.get(0)).contains(" is Java 11;");
        assertThat(olds.get(1)).as("by its file").contains(" is Java 8;");
        assertThat(olds.get(2)).as("by its own word").contains(" is Java 8;");
    }

    @Test
    void it_is_executable_where_it_lies() {
        assertThat(SCRIPT).isExecutable();
    }
}
