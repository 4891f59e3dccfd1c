package rungwise.shoplog;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Which attempts were taken back, as the database keeps it. */
final class UndoneRows {
    /** Of an attempt that still counts. */
    static final String COUNTS = " NOT EXISTS (SELECT 1 FROM undone WHERE undone.attempt = attempt.id) ";
    private static final String ALL = "SELECT a.body AS made, s.body AS said, u.at_millis, u.said_by, u.why FROM undone u "
            + "JOIN attempt a ON a.id = u.attempt LEFT JOIN spot_said s ON s.attempt = a.id ";

    private static final RowMapper<Undone> UNDONE = (row, ctx) -> undone(row.getString("made"), row.getString("said"), row.getLong("at_millis"),
            row.getString("said_by"), row.getString("why"));

    private UndoneRows() {
    }

    /** Takes an attempt back; what was taken back before stays as it was. */
    static void add(Handle handle, String attempt, UndoOrder order, Instant at, Optional<SenderKey> key) {
        if (!isThere(handle, "attempt", "id", attempt)) {
            // SQLite would take it in
            throw new IllegalArgumentException("no attempt " + attempt);
        }
        if (key.flatMap(k -> k.before(handle, "undone", "attempt", "log.key-reused-undone")).isEmpty()
                && !isThere(handle, "undone", "attempt", attempt)) {
            SenderKey.bind(handle.createUpdate("INSERT INTO undone (attempt, at_millis, said_by, why, idempotency_key, fingerprint) "
                            + "VALUES (:attempt, :at, :by, :why, :key, :fingerprint)"), key)
                    .bind("attempt", attempt).bind("at", at.toEpochMilli()).bind("by", order.by()).bind("why", order.why()).execute();
        }
    }

    private static boolean isThere(Handle handle, String table, String column, String id) {
        return handle.createQuery("SELECT COUNT(*) FROM " + table + " WHERE " + column + " = :id").bind("id", id).mapTo(Long.class).one() > 0;
    }

    /** Those of a spot, in the order in which they were taken back. */
    static List<Undone> of(Handle handle, String spot) {
        return handle.createQuery(ALL + "WHERE a.spot = :spot ORDER BY u.seq").bind("spot", spot).map(UNDONE).list();
    }

    static List<Undone> all(Handle handle) {
        return handle.createQuery(ALL + "ORDER BY u.seq").map(UNDONE).list();
    }

    private static Undone undone(String made, String said, long at, String by, String why) {
        JsonNode told = said == null ? JsonNodeFactory.instance.objectNode() : Shoplog.MAPPER.readValue(said, Said.class).told();
        return new Undone(Shoplog.attempt(made), told, Instant.ofEpochMilli(at), by, why);
    }

    /** The place of the last one; 0 = none. */
    static long last(Handle handle) {
        return handle.createQuery("SELECT COALESCE(MAX(seq), 0) FROM undone").mapTo(Long.class).one();
    }
}
