package rungwise.question;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Period;

/** Reads an ISO 8601 duration as hours, weeks, months (30 days) and years (365 days) included. */
public final class Ages {
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
}
