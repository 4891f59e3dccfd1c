package rungwise.shoplog;

import java.sql.Types;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import tools.jackson.databind.JsonNode;

/** Spots that are worked on. They lie where the log lies, under the same promise: what was returned for is on the disk. */
public final class SpotStore {
    private static final String OPEN = " AND COALESCE((SELECT CASE WHEN marked = 1 THEN 'marked' ELSE outcome END FROM attempt WHERE attempt.spot = spot.id AND" + UndoneRows.COUNTS
            + "ORDER BY at_millis DESC, attempt.seq DESC LIMIT 1), '') <> 'cleared'";

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
                SenderKey.bind(handle.createUpdate("INSERT INTO spot (id, at_millis, idempotency_key, fingerprint, body) "
                                + "VALUES (:id, :at, :key, :fingerprint, :body)"), key)
                        .bind("id", id).bind("at", at.toEpochMilli())
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
                        attempts(handle, id), UndoneRows.of(handle, id)));
    }

    private record Asked(Instant at, String body) {
    }

    /** The question of a spot and all that was told of it since; nothing where there is no such spot. */
    static List<JsonNode> told(Handle handle, String id) {
        return Stream.concat(handle.createQuery("SELECT body FROM spot WHERE id = :id").bind("id", id).mapTo(String.class)
                .map(Shoplog.MAPPER::readTree).list().stream(), said(handle, id).stream().map(Said::told)).toList();
    }

    private static List<Said> said(Handle handle, String id) {
        return handle.createQuery("SELECT body FROM spot_said WHERE spot = :id AND NOT EXISTS (SELECT 1 FROM undone "
                        + "WHERE undone.attempt = spot_said.attempt) ORDER BY seq").bind("id", id)
                .mapTo(String.class).map(body -> Shoplog.MAPPER.readValue(body, Said.class)).list();
    }

    private static List<Attempt> attempts(Handle handle, String id) {
        return handle.createQuery("SELECT body FROM attempt WHERE spot = :id AND" + UndoneRows.COUNTS + "ORDER BY at_millis, seq").bind("id", id)
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
                tell(handle, attempt.spot().orElseThrow(), said, Optional.empty());
            }
            return kept;
        });
    }

    /**
     * Adds what became known of a spot.
     *
     * @param id  of a spot that is kept
     * @param key of the sender: the second time it comes nothing is added
     * @throws KeyReused where the key came with something else
     */
    public void tell(String id, Said said, Optional<SenderKey> key) {
        log.write("fact-not-kept", handle -> key.flatMap(k -> told(handle, k)).isPresent() ? 0 : tell(handle, id, said, key));
    }

    /**
     * Whether something was told under a key.
     *
     * @throws KeyReused where it was something else
     */
    public boolean isTold(SenderKey key) {
        return log.read(handle -> told(handle, key)).isPresent();
    }

    private static Optional<String> told(Handle handle, SenderKey key) {
        return key.before(handle, "spot_said", "spot", "log.key-reused-fact");
    }

    private static int tell(Handle handle, String id, Said said, Optional<SenderKey> key) {
        return SenderKey.bind(handle.createUpdate("INSERT INTO spot_said (spot, attempt, idempotency_key, fingerprint, body) "
                        + "VALUES (:spot, :attempt, :key, :fingerprint, :body)"), key)
                .bind("spot", id).bindBySqlType("attempt", said.attempt().orElse(null), Types.VARCHAR)
                .bind("body", Shoplog.MAPPER.writeValueAsString(said)).execute();
    }

    /**
     * Takes an attempt back: with it goes what it told of its spot. It stays in the log and counts for nothing.
     *
     * @param attempt id of one that is kept
     * @param key     of the sender: the second time it comes nothing is added
     * @throws KeyReused where the key came with something else
     */
    public void undo(String attempt, UndoOrder order, Instant at, Optional<SenderKey> key) {
        log.write("not-undone", handle -> {
            UndoneRows.add(handle, attempt, order, at, key);
            return 0;
        });
    }

    /**
     * Spots after a place, in the order in which they were kept. A spot is open until the last that was tried on it took it off.
     *
     * @param all also those that are not open
     */
    public SpotPage page(Optional<Cursor> from, int limit, boolean all) {
        long after = from.orElse(Cursor.START).after();
        return log.read(handle -> {
            List<Placed> found = handle.createQuery("SELECT spot.seq, spot.id FROM spot WHERE spot.seq > :after" + (all ? "" : OPEN) + " ORDER BY spot.seq LIMIT :limit")
                    .bind("after", after).bind("limit", limit + 1).map((row, ctx) -> new Placed(row.getLong("seq"), row.getString("id"))).list();
            List<Placed> shown = found.subList(0, Math.min(limit, found.size()));
            long last = shown.isEmpty() ? after : shown.get(shown.size() - 1).seq();
            return new SpotPage(shown.stream().map(one -> one(handle, one.id()).orElseThrow()).toList(), new Cursor(last), found.size() > limit);
        });
    }

    private record Placed(long seq, String id) {
    }
}
