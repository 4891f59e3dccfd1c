package rungwise.shoplog;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool;
import java.io.IOException;
import java.security.SecureRandom;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.SqlStatement;
import rungwise.knowledge.load.Mappers;
import rungwise.question.Problem;
import rungwise.text.Texts;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * The log. What {@link #add} and {@link #addAll} have returned for is on the disk, and what they threw for is not, not
 * even in part; see {@link LogFailure} for what is in doubt when a server is lost. It may be used from many threads, and
 * by several processes at once.
 */
public final class Shoplog implements AutoCloseable {
    static final JsonMapper MAPPER = Mappers.json().rebuild().disable(SerializationFeature.INDENT_OUTPUT)
            .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_EMPTY)).build();
    private static final int BATCH = 500;
    /** While a server is away each waits for seconds; more than these hear at once that they shall come again. */
    private static final int AT_ONCE = 100;
    /** Any number of our own: who writes holds it until the end, so that seq grows in the order of commits. */
    static final long WRITERS = 8_420_001;
    private static final String INSERT = "INSERT INTO attempt (id, shop, spot, at_millis, contaminant, surface, "
            + "age_hours, warmest_c, method, outcome, marked, prepared, minutes, idempotency_key, fingerprint, body) VALUES (:id, :shop, "
            + ":spot, :at, :contaminant, :surface, :age, :warmest, :method, :outcome, :marked, :prepared, :minutes, :key, :fingerprint, "
            + ":body)";

    private final Place place;
    private final HikariDataSource source;
    private final Jdbi jdbi;
    private final Semaphore room = new Semaphore(AT_ONCE);

    private Shoplog(Place place, HikariDataSource source) {
        this.place = place;
        this.source = source;
        this.jdbi = Jdbi.create(source);
    }

    /**
     * Opens the log, and makes it where there is none.
     *
     * @param data a folder, or a JDBC URL of PostgreSQL
     * @throws LogFailure where that is not possible
     */
    public static Shoplog open(String data) {
        Place place = Place.of(data);
        HikariDataSource source;
        try {
            source = place.connect();
        } catch (HikariPool.PoolInitializationException | IllegalStateException e) {
            throw Failures.of(Texts.said("log.not-opened", "place", Place.shown(place.url())), e);
        }
        try {
            place.migrate(source);
            return new Shoplog(place, source);
        } catch (IOException e) {
            source.close();
            throw Failures.of(Texts.said("log.not-opened", "place", Place.shown(place.url())), e);
        } catch (RuntimeException e) {
            source.close();
            throw e;
        }
    }

    /** The spots that are kept beside the attempts. */
    public SpotStore spots() {
        return new SpotStore(this, new SecureRandom());
    }

    /** Whether a log is there already. */
    public static boolean exists(String data) {
        return Place.exists(data);
    }

    /** Where it lies, without a password. */
    public String place() {
        return Place.shown(place.url());
    }

    /** What whoever keeps the database should know: where it is set so that it may lose what it has promised. */
    public List<String> cautions() {
        return place.cautions(source);
    }

    @Override
    public void close() {
        source.close();
    }

    /**
     * Keeps an attempt.
     *
     * @param key of the sender: the second time it comes, what was kept the first time is returned and nothing is added
     * @throws KeyReused  where the key stands for another attempt
     * @throws BadAttempt where it names a kept spot that lies elsewhere
     * @throws LogFailure where it was not acknowledged; sending it again under its key keeps it once
     */
    public Kept add(Attempt attempt, Optional<SenderKey> key) {
        return write("not-kept", handle -> add(handle, attempt, key));
    }

    /** The same, as a part of what is written together. */
    static Kept add(Handle handle, Attempt attempt, Optional<SenderKey> key) {
        Optional<Attempt> before = key.flatMap(k -> k.before(handle, "attempt", "body", "log.key-reused")).map(Shoplog::attempt);
        if (before.isPresent()) {
            return new Kept(before.get(), true);
        }
        SpotSurface.check(handle, attempt);
        bind(handle.createUpdate(INSERT), attempt, key).execute();
        return new Kept(attempt, false);
    }

    /**
     * Keeps many attempts, all or none; those that are there already are left as they are.
     *
     * @return how many were new
     * @throws BadAttempt where an id is there with another content, or a kept spot is named that lies elsewhere; whatever the iterator throws ends it as well
     */
    public long addAll(Iterator<Attempt> attempts) {
        return write("none-kept", handle -> {
            long added = 0;
            List<Attempt> some = new ArrayList<>(BATCH);
            while (attempts.hasNext()) {
                some.add(attempts.next());
                if (some.size() == BATCH || !attempts.hasNext()) {
                    added += addSome(handle, some);
                    some.clear();
                }
            }
            return added;
        });
    }

    private static long addSome(Handle handle, List<Attempt> some) {
        Map<String, Attempt> there = new HashMap<>();
        handle.createQuery("SELECT body FROM attempt WHERE id IN (<ids>)")
                .bindList("ids", some.stream().map(Attempt::id).distinct().toList())
                .mapTo(String.class).map(Shoplog::attempt).forEach(a -> there.put(a.id(), a));
        PreparedBatch batch = handle.prepareBatch(INSERT);
        long added = 0;
        for (Attempt one : some) {
            Attempt same = there.putIfAbsent(one.id(), one);
            if (same == null) {
                SpotSurface.check(handle, one);
                bind(batch, one, Optional.empty()).add();
                added++;
            } else if (!same.equals(one)) {
                throw new BadAttempt(List.of(Problem.said("/id", "in-the-log-already", "id",
                        one.id())));
            }
        }
        if (added > 0) {
            batch.execute();
        }
        return added;
    }

    /** How many attempts there are. */
    public long size() {
        return read(handle -> handle.createQuery(
                "SELECT COUNT(*) FROM attempt").mapTo(Long.class).one());
    }

    /** Attempts after a place in the log, save those that were taken back. */
    public Page page(Optional<Cursor> from, int limit) {
        long after = from.orElse(Cursor.START).after();
        return read(handle -> {
            List<Placed> found = handle.createQuery(
                            "SELECT seq, body FROM attempt WHERE seq > :after AND" + UndoneRows.COUNTS + "ORDER BY seq LIMIT :limit")
                    .bind("after", after).bind("limit", limit + 1)
                    .map((row, ctx) -> new Placed(row.getLong("seq"), row.getString("body"))).list();
            List<Placed> shown = found.subList(0, Math.min(limit, found.size()));
            long last = shown.isEmpty() ? after : shown.get(shown.size() - 1).seq();
            return new Page(shown.stream().map(p -> attempt(p.body())).toList(), new Cursor(last),
                    found.size() > limit);
        });
    }

    private record Placed(long seq, String body) {
    }

    /** The attempts that came last, oldest of them first, with those that were taken back. */
    public List<Attempt> last(int limit) {
        return read(handle -> {
            List<Attempt> last = new ArrayList<>(handle.createQuery(
                            "SELECT body FROM attempt ORDER BY seq DESC LIMIT :limit").bind("limit", limit)
                    .mapTo(String.class).map(Shoplog::attempt).list());
            Collections.reverse(last);
            return List.copyOf(last);
        });
    }

    public Optional<Attempt> one(String id) {
        return read(handle -> body(handle, id).map(Shoplog::attempt));
    }

    private static Optional<String> body(Handle handle, String id) {
        return handle.createQuery("SELECT body FROM attempt WHERE id = :id").bind("id", id).mapTo(String.class)
                .findOne();
    }

    /** The attempts that were taken back, in the order in which they were. */
    public List<Undone> undone() {
        return read(UndoneRows::all);
    }

    /** By how many takings-back what was learned from this log is old; it only grows. */
    long lastUndone() {
        return read(UndoneRows::last);
    }

    /** What learning needs of the attempts after a place, in their order; those that were taken back teach nothing. */
    List<Tried> tried(long after, int limit) {
        return read(handle -> handle.createQuery(
                        "SELECT seq, id, shop, spot, contaminant, surface, age_hours, warmest_c, method, outcome, marked, prepared, minutes "
                                + "FROM attempt WHERE seq > :after AND" + UndoneRows.COUNTS + "ORDER BY seq LIMIT :limit")
                .bind("after", after).bind("limit", limit).map((row, ctx) -> tried(row)).list());
    }

    private static Tried tried(ResultSet row) throws SQLException {
        return new Tried(row.getLong("seq"), row.getString("id"), row.getString("shop"),
                Optional.ofNullable(row.getString("spot")), row.getString("contaminant"),
                List.of(row.getString("surface").split(" ")), number(row, "age_hours"), number(row, "warmest_c"),
                row.getString("method"), row.getInt("marked") == 1 ? Outcome.MARKED : Outcome.of(row.getString("outcome")).orElseThrow(),
                row.getInt("prepared") == 1, number(row, "minutes"));
    }

    private static OptionalDouble number(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** One writer after another; SQLite sees to that itself. */
    private void queue(Handle handle) {
        if (!place.isFile()) {
            handle.createQuery("SELECT 1 FROM pg_advisory_xact_lock(:writers)").bind("writers", WRITERS)
                    .mapTo(Integer.class).one();
        }
    }

    private static <S extends SqlStatement<S>> S bind(S statement, Attempt attempt, Optional<SenderKey> key) {
        Tried tried = Tried.of(0, attempt);
        return SenderKey.bind(statement, key).bind("id", attempt.id()).bind("shop", attempt.shop())
                .bindBySqlType("spot", attempt.spot().orElse(null), Types.VARCHAR)
                .bind("at", attempt.at().toEpochMilli()).bind("contaminant", attempt.contaminant())
                .bind("surface", String.join(" ", attempt.surface()))
                .bindBySqlType("age", boxed(tried.ageHours()), Types.DOUBLE)
                .bindBySqlType("warmest", boxed(tried.warmestC()), Types.DOUBLE)
                .bind("method", attempt.method()).bind("outcome", (attempt.outcome() == Outcome.MARKED ? Outcome.CLEARED : attempt.outcome()).word())
                .bind("marked", attempt.outcome() == Outcome.MARKED ? 1 : 0)
                .bind("prepared", attempt.prepared() ? 1 : 0)
                .bindBySqlType("minutes", boxed(attempt.minutes()), Types.DOUBLE)
                .bind("body", MAPPER.writeValueAsString(attempt));
    }

    private static Double boxed(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    static Attempt attempt(String body) {
        return MAPPER.readValue(body, Attempt.class);
    }

    /** All of it or none, one writer after another. */
    <T> T write(String what, Function<Handle, T> work) {
        return guarded(what, () -> jdbi.inTransaction(handle -> {
            queue(handle);
            return work.apply(handle);
        }));
    }

    <T> T read(Function<Handle, T> work) {
        return guarded("not-read", () -> jdbi.withHandle(work::apply));
    }

    private <T> T guarded(String what, Supplier<T> work) {
        if (!room.tryAcquire()) {
            throw new LogFailure(LogFailure.Cause.BUSY, Texts.said("log.too-many-wait", "what",
                    Texts.said("log." + what), "many", AT_ONCE), null);
        }
        try {
            return work.get();
        } catch (JdbiException e) {
            throw Failures.of(Texts.said("log." + what), e);
        } finally {
            room.release();
        }
    }
}
