package rungwise.shoplog;

import java.sql.Types;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.jdbi.v3.core.Handle;
import tools.jackson.databind.JsonNode;

/** Spots that are worked on. They lie where the log lies, under the same promise: what was returned for is on the disk. */
public final class SpotStore {
    private final Shoplog log;
    private final RandomGenerator random;

    /**
     * The spots of a log.
     *
     * @param random draws their names
     */
    SpotStore(Shoplog log, RandomGenerator random) {
        this.log = log;
        this.random = random;
    }

    /**
     * Keeps a spot under a name of its own.
     *
     * @param question in ids
     * @param key      of the sender: the second time it comes, the spot of the first time is returned
     * @throws KeyReused  where the key stands for another spot
     * @throws LogFailure where it was not acknowledged
     */
    public KeptSpot begin(JsonNode question, Instant at, Optional<SenderKey> key) {
        return log.write("spot-not-kept", handle -> {
            Optional<String> before = key.flatMap(k -> k.before(handle, "spot", "id", "log.key-reused-spot"));
            String id = before.orElseGet(() -> free(handle));
            if (before.isEmpty()) {
                handle.createUpdate("INSERT INTO spot (id, at_millis, idempotency_key, fingerprint, body) "
                                + "VALUES (:id, :at, :key, :fingerprint, :body)")
                        .bind("id", id).bind("at", at.toEpochMilli())
                        .bindBySqlType("key", key.map(SenderKey::key).orElse(null), Types.VARCHAR)
                        .bindBySqlType("fingerprint", key.map(SenderKey::fingerprint).orElse(null), Types.VARCHAR)
                        .bind("body", Shoplog.MAPPER.writeValueAsString(question)).execute();
            }
            return one(handle, id).orElseThrow();
        });
    }

    /** A name that no spot has, nor a shop gave to one of its own in the log. */
    private String free(Handle handle) {
        String id = SpotName.drawn(random);
        while (handle.createQuery("SELECT (SELECT COUNT(*) FROM spot WHERE id = :id) + (SELECT COUNT(*) FROM attempt "
                + "WHERE spot = :id)").bind("id", id).mapTo(Long.class).one() > 0) {
            id = SpotName.drawn(random);
        }
        return id;
    }

    /** The id that somebody says. */
    public static String name(String said) {
        return SpotName.of(said);
    }

    /** The spot, by its name as somebody says it. */
    public Optional<KeptSpot> one(String said) {
        return log.read(handle -> one(handle, SpotName.of(said)));
    }

    private static Optional<KeptSpot> one(Handle handle, String id) {
        return handle.createQuery("SELECT at_millis, body FROM spot WHERE id = :id").bind("id", id)
                .map((row, ctx) -> new Asked(Instant.ofEpochMilli(row.getLong("at_millis")), row.getString("body"))).findOne()
                .map(asked -> new KeptSpot(id, asked.at(), Shoplog.MAPPER.readTree(asked.body()), said(handle, id),
                        attempts(handle, id)));
    }

    private record Asked(Instant at, String body) {
    }

    private static List<Said> said(Handle handle, String id) {
        return handle.createQuery("SELECT body FROM spot_said WHERE spot = :id ORDER BY seq").bind("id", id)
                .mapTo(String.class).map(body -> Shoplog.MAPPER.readValue(body, Said.class)).list();
    }

    private static List<Attempt> attempts(Handle handle, String id) {
        return handle.createQuery("SELECT body FROM attempt WHERE spot = :id ORDER BY at_millis, seq").bind("id", id)
                .mapTo(String.class).map(Shoplog::attempt).list();
    }

    /**
     * The attempt that was kept under a key.
     *
     * @throws KeyReused where the key came with something else
     */
    public Optional<Attempt> under(SenderKey key) {
        return log.read(handle -> key.before(handle, "attempt", "body", "log.key-reused")).map(Shoplog::attempt);
    }

    /**
     * Keeps an attempt in the log, and beside it what it told of its spot: both or neither.
     *
     * @param attempt made on a spot that is kept
     */
    public Kept add(Attempt attempt, Said said, Optional<SenderKey> key) {
        return log.write("not-kept", handle -> {
            Kept kept = Shoplog.add(handle, attempt, key);
            if (!kept.again() && !said.isNothing()) {
                tell(handle, attempt.spot().orElseThrow(), said);
            }
            return kept;
        });
    }

    /**
     * Adds what became known of a spot.
     *
     * @param id of a spot that is kept
     */
    public void tell(String id, Said said) {
        log.write("fact-not-kept", handle -> tell(handle, id, said));
    }

    private static int tell(Handle handle, String id, Said said) {
        return handle.createUpdate("INSERT INTO spot_said (spot, attempt, body) VALUES (:spot, :attempt, :body)")
                .bind("spot", id).bindBySqlType("attempt", said.attempt().orElse(null), Types.VARCHAR)
                .bind("body", Shoplog.MAPPER.writeValueAsString(said)).execute();
    }
}
