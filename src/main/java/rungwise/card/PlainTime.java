package rungwise.card;

import rungwise.text.Texts;

/** A time as one says it at the vehicle: in words where it is short, and never longer than it is. */
public final class PlainTime {
    private static final double HALF_TO = 0.75;
    private static final double MINUTE_TO = 2;
    private static final double MINUTES_TO = 100;
    private static final double HOUR = 60;
    private static final double DAY = 24 * HOUR;

    private PlainTime() {
    }

    public static String ofMinutes(double minutes) {
        return minutes < HALF_TO ? say("half-minute") : minutes < MINUTE_TO ? say("minute")
                : minutes < MINUTES_TO ? say("minutes", "many", (long) minutes)
                : minutes < 2 * HOUR ? say("hour") : minutes < DAY ? say("hours", "many", (long) (minutes / HOUR))
                : minutes < 2 * DAY ? say("day") : say("days", "many", (long) (minutes / DAY));
    }

    /** Two of them, the unit once where it is the same. */
    static String span(double from, double to) {
        boolean minutes = from >= HALF_TO && to >= MINUTE_TO && to < MINUTES_TO;
        return Texts.said("span", "from", minutes ? String.valueOf(Math.round(from)) : ofMinutes(from), "to", ofMinutes(to));
    }

    private static String say(String unit, Object... named) {
        return Texts.said("card.time." + unit, named);
    }
}
