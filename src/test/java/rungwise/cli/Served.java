package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program itself, serving in a process of its own. */
final class Served implements AutoCloseable {
    private final Process process;
    private final int port;

    /**
     * Starts it.
     *
     * @param folder for what it unpacks
     * @param data   where its log lies
     */
    Served(Path folder, String data) throws IOException {
        Path natives = Files.createDirectories(folder.resolve("natives"));
        process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx256m",
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Dorg.sqlite.tmpdir=" + natives,
                "-Dorg.slf4j.simpleLogger.defaultLogLevel=error", "-cp", System.getProperty("java.class.path"),
                Main.class.getName(), "serve", "--port", "0", "--no-learning", "--data", data)
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
        BufferedReader out = process.inputReader();
        String line = out.readLine();
        Matcher found = Pattern.compile("http://127\\.0\\.0\\.1:(\\d+)/").matcher(String.valueOf(line));
        assertThat(found.find()).as(line).isTrue();
        port = Integer.parseInt(found.group(1));
    }

    int port() {
        return port;
    }

    /** As by kill -9. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() throws InterruptedException {
        kill();
    }
}
