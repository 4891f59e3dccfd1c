package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwise.Base;
import rungwise.http.Learning;
import rungwise.http.Sender;
import rungwise.http.Service;
import rungwise.shoplog.Shoplog;
import rungwise.shoplog.Store;

/**
 * The program itself, killed as by kill -9 while several send attempts: what was answered with 201 is there once and whole,
 * and a key sent again after the restart brings the same attempt. One kill in a build, 50 with the profile {@code hard}.
 */
class ServeKilledTest {
    /** Fewer than elsewhere: the program takes its time to start. */
    private static final int KILLS = Math.max(1, Integer.getInteger("kills", 3) / 4);
    private static final int SENDERS = 4;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void what_was_answered_with_201_is_there_once_after_a_kill(Store store) throws Exception {
        String data = store.place(folder);
        Sender sender = new Sender();
        Random random = new Random(85);
        int doubts = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            int before = sender.acknowledged();
            try (Served serve = new Served(folder, data)) {
                sender.sendAgain(serve.port());
                Sender.Crowd crowd = sender.crowd(SENDERS, serve.port(), true);
                long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
                while (sender.acknowledged() == before && System.nanoTime() < end) {
                    TimeUnit.MILLISECONDS.sleep(1);
                }
                TimeUnit.MILLISECONDS.sleep(50 + random.nextInt(400));
                serve.kill();
                assertThat(crowd.stop()).as("refused").isEmpty();
            }
            doubts += sender.inDoubt();
        }
        try (Learning learning = new Learning(Shoplog.open(data), Base.advisor().knowledge(), false);
             Service service = Service.start(Base.advisor(), Optional.of(learning), "127.0.0.1", 0)) {
            sender.holds(service.port());
            sender.sendAgain(service.port());
            sender.holds(service.port());
        }
        assertThat(sender.acknowledged()).isPositive();
        System.out.println("crash: " + KILLS + " kills of serve on " + store + ", " + sender.acknowledged()
                + " attempts answered with 201, " + doubts + " in doubt and sent again, none lost, none twice");
    }
}
