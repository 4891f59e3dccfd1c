package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.shoplog.Shoplog;

/** The program itself, as a process of its own that is sent SIGTERM in the middle of a request. */
class ServeStopTest {
    private static final String ATTEMPT = "{\"contaminant\":\"tar_spot\",\"method\":\"aliph_tar\",\"outcome\":\"cleared\"}";
    private static final int HALF = ATTEMPT.length() / 2;
    /** 128 and the number of the signal. */
    private static final int ENDED_BY_SIGTERM = 143;

    @TempDir
    private Path folder;

    @Test
    void it_ends_the_attempt_keeps_it_closes_the_log_and_exits_as_a_process_told_to_stop() throws Exception {
        Path log = folder.resolve("log");
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-Dorg.sqlite.tmpdir=" + folder, "-cp", System.getProperty("java.class.path"),
                Main.class.getName(), "serve", "--port", "0", "--data", log.toString()).redirectErrorStream(true).start();
        try (BufferedReader out = process.inputReader(); Socket socket = new Socket("127.0.0.1", port(out))) {
            socket.setSoTimeout(8_000);
            send(socket, "POST /v1/attempts HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nExpect: 100-continue\r\n"
                    + "Content-Length: " + ATTEMPT.length() + "\r\n\r\n");
            assertThat((char) socket.getInputStream().read()).as("it asks for the body").isEqualTo('H');
            send(socket, ATTEMPT.substring(0, HALF));
            process.toHandle().destroy();
            assertThat(process.waitFor(1_300, TimeUnit.MILLISECONDS)).as("it waits for the rest").isFalse();
            send(socket, ATTEMPT.substring(HALF));
            assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8)).contains("HTTP/1.1 201");
            assertThat(process.waitFor(10, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isEqualTo(ENDED_BY_SIGTERM);
            assertThat(out.lines()).as("it says nothing of a failure").isEmpty();
        } finally {
            process.destroyForcibly();
        }
        assertThat(log).as("a log that was closed leaves no journal behind").isDirectoryNotContaining("glob:**-wal");
        try (Shoplog kept = Shoplog.open(log.toString())) {
            assertThat(kept.size()).isEqualTo(1);
        }
    }

    private static int port(BufferedReader out) throws IOException {
        String line = out.readLine();
        Matcher port = Pattern.compile("http://127\\.0\\.0\\.1:(\\d+)/").matcher(String.valueOf(line));
        assertThat(port.find()).as(line).isTrue();
        return Integer.parseInt(port.group(1));
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
        socket.getOutputStream().flush();
    }
}
