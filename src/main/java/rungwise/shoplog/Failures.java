package rungwise.shoplog;

import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.transaction.TransactionException;
import org.sqlite.SQLiteException;
import rungwise.text.Texts;

/** Tells why a database said no. */
final class Failures {
    /** Result codes of SQLite: https://www.sqlite.org/rescode.html, the low byte. */
    private static final int SQLITE_BUSY = 5;
    private static final int SQLITE_LOCKED = 6;
    private static final int SQLITE_FULL = 13;
    /** PostgreSQL, appendix A: disk_full, lock_not_available, query_canceled. */
    private static final String PG_DISK_FULL = "53100";
    private static final Set<String> PG_BUSY = Set.of("55P03", "57014", "40001", "40P01");

    private Failures() {
    }

    static LogFailure of(String what, Throwable thrown) {
        LogFailure.Cause why = LogFailure.Cause.UNREACHABLE;
        for (SQLException e : beneath(thrown)) {
            Optional<LogFailure.Cause> cause = cause(e);
            if (cause.isPresent()) {
                why = cause.get();
                break;
            }
        }
        // a server may give up for good while it commits, and has then kept it or not
        String kept = hasInIt(thrown, TransactionException.class) && !hasInIt(thrown, SQLiteException.class)
                ? "log.unacknowledged" : "log.nothing-kept";
        return new LogFailure(why, Texts.said("log." + why.name().toLowerCase(Locale.ROOT), "what", what, "kept",
                Texts.said(kept), "said", said(thrown)), thrown);
    }

    private static Optional<LogFailure.Cause> cause(SQLException e) {
        if (e instanceof SQLiteException file) {
            return switch (file.getResultCode().code & 0xff) {
                case SQLITE_FULL -> Optional.of(LogFailure.Cause.FULL);
                case SQLITE_BUSY, SQLITE_LOCKED -> Optional.of(LogFailure.Cause.BUSY);
                default -> Optional.empty();
            };
        }
        if (PG_DISK_FULL.equals(e.getSQLState())) {
            return Optional.of(LogFailure.Cause.FULL);
        }
        return PG_BUSY.contains(String.valueOf(e.getSQLState())) ? Optional.of(LogFailure.Cause.BUSY)
                : Optional.empty();
    }

    /** What the database said stands deepest; what stands above it says only that something has failed. */
    private static String said(Throwable thrown) {
        String said = String.valueOf(thrown.getMessage());
        for (Throwable one = thrown; one != null; one = one.getCause()) {
            said = one instanceof SQLException ? String.valueOf(one.getMessage()) : said;
        }
        return said.lines().findFirst().orElse("").replaceFirst("\\.$", "");
    }

    private static boolean hasInIt(Throwable thrown, Class<? extends Throwable> kind) {
        return all(thrown).stream().anyMatch(kind::isInstance);
    }

    private static List<SQLException> beneath(Throwable thrown) {
        return all(thrown).stream().filter(SQLException.class::isInstance).map(SQLException.class::cast).toList();
    }

    /** Every error in the chain, also those of a failed rollback. */
    private static Set<Throwable> all(Throwable thrown) {
        Set<Throwable> seen = new LinkedHashSet<>();
        Deque<Throwable> left = new ArrayDeque<>();
        left.add(thrown);
        while (!left.isEmpty()) {
            Throwable one = left.poll();
            if (!seen.add(one)) {
                continue;
            }
            if (one instanceof SQLException e) {
                Optional.ofNullable(e.getNextException()).ifPresent(left::add);
            }
            Optional.ofNullable(one.getCause()).ifPresent(left::add);
            left.addAll(List.of(one.getSuppressed()));
        }
        return seen;
    }
}
