package rungwise.shoplog;

import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

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
        // the last says what the database said; those above it only that something had failed
        String beneath = beneath(thrown).stream().reduce((above, below) -> below).map(Throwable::getMessage).or(() ->
                Optional.ofNullable(thrown.getMessage())).flatMap(m -> m.lines().findFirst()).orElse("")
                .replaceFirst("\\.$", "");
        return new LogFailure(why, what + ": " + switch (why) {
            case FULL -> "the disk is full. Nothing of it was kept; make room and send it again.";
            case BUSY -> "another holds it. Nothing of it was kept; send it again.";
            case UNREACHABLE -> beneath + ". Nothing was acknowledged; see that the place is there, may be written and "
                    + "was not made by a newer program, then send it again under the same key.";
        }, thrown);
    }

    private static Optional<LogFailure.Cause> cause(SQLException e) {
        if (e instanceof org.sqlite.SQLiteException file) {
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

    /** Every SQL error in the chain, also those of a failed rollback. */
    private static Set<SQLException> beneath(Throwable thrown) {
        Set<SQLException> found = new java.util.LinkedHashSet<>();
        Set<Throwable> seen = new HashSet<>();
        Deque<Throwable> left = new ArrayDeque<>();
        left.add(thrown);
        while (!left.isEmpty()) {
            Throwable one = left.poll();
            if (!seen.add(one)) {
                continue;
            }
            if (one instanceof SQLException e) {
                found.add(e);
                Optional.ofNullable(e.getNextException()).ifPresent(left::add);
            }
            Optional.ofNullable(one.getCause()).ifPresent(left::add);
            left.addAll(java.util.List.of(one.getSuppressed()));
        }
        return found;
    }
}
