package rungwise.question;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Period;

/** Reads an ISO 8601 duration as hours, weeks, months (30 days) and years (365 days) included. */
public final class Ages {
    private static final long MINUTES_A_DAY = 24 * 60;

    private Ages() {
    }

    static boolean isDuration(String text) {
        try {
            hours(text);
            return true;
        } catch (DateTimeException | ArithmeticException e) {
            return false;
        }
    }

    /**
     * Hours.
     *
     * @throws DateTimeException where the text is no such duration
     */
    public static double hours(String text) {
        try {
            return Duration.parse(text).toMinutes() / 60.0;
        } catch (DateTimeException notDaysOrTime) {
            Period period = Period.parse(text);
            return 24.0 * (period.getYears() * 365L + period.getMonths() * 30L + period.getDays());
        }
    }

    /** Hours as such a duration, in days, hours and minutes. */
    public static String iso(double hours) {
        long minutes = Math.round(hours * 60);
        String rest = Duration.ofMinutes(minutes % MINUTES_A_DAY).toString();
        return minutes < MINUTES_A_DAY ? rest : "P" + minutes / MINUTES_A_DAY + "D"
                + (minutes % MINUTES_A_DAY == 0 ? "" : rest.substring(1));
    }
}
