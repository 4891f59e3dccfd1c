package rungwise.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwise.Base;

/** A service that is told to stop finishes what has begun and takes nothing new. */
class GracefulStopTest {
    private static final String BODY = "{\"contaminant\":\"tar_spot\",\"age\":\"P12D\",\"surface\":\"clear_2k_sound\"}";
    private static final int HALF = BODY.length() / 2;

    @Test
    void a_request_that_has_begun_is_answered_and_the_next_is_not_taken() throws Exception {
        Service service = Service.start(Base.advisor(), Optional.empty(), "127.0.0.1", 0);
        int port = service.port();
        try (Socket socket = new Socket("127.0.0.1", port)) {
            OutputStream out = socket.getOutputStream();
            send(out, "POST /v1/ladders HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nContent-Type: application/json\r\nContent-Length: "
                    + BODY.length() + "\r\nConnection: close\r\n\r\n" + BODY.substring(0, HALF));
            Thread.sleep(300);
            Thread stopping = new Thread(service::close);
            stopping.start();
            Thread.sleep(300);
            send(out, BODY.substring(HALF));
            assertThat(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8)).startsWith("HTTP/1.1 200");
            stopping.join();
        }
        assertThatThrownBy(() -> new Socket("127.0.0.1", port)).isInstanceOf(IOException.class);
    }

    private static void send(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }
}
