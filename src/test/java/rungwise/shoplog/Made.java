package rungwise.shoplog;

import java.time.Instant;
import java.time.InstantSource;
import rungwise.Base;
import rungwise.knowledge.load.Mappers;

/** Attempts for tests. */
final class Made {
    static final Instant NOW = Instant.parse("2026-05-04T07:30:00Z");
    static final AttemptReader READER = new AttemptReader(Base.advisor().knowledge(), InstantSource.fixed(NOW));

    private Made() {
    }

    static Attempt attempt(String yaml) {
        return READER.read(Mappers.question().readTree(yaml));
    }

    /** Tar on sound clear, a method, an outcome and whatever else is given. */
    static Attempt tar(String method, String outcome, String more) {
        return attempt("{contaminant: tar_spot, age: P12D, surface: clear_2k_sound, method: " + method + ", outcome: "
                + outcome + (more.isEmpty() ? "" : ", " + more) + "}");
    }
}
