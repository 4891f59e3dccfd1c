package rungwise.knowledge.common;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as they are written out. */
public final class Figures {
    private static final double SMALLEST_WRITTEN = 1e-12;
    private static final double LARGEST_WRITTEN = 1e12;

    private Figures() {
    }

    /** As a person writes it: no trailing zeros, at most two decimals. */
    public static String text(double value) {
        if (Math.rint(value) == value && Math.abs(value) < 1e9) {
            return Long.toString((long) value);
        }
        long hundredths = Math.round(Math.abs(value) * 100);
        if (hundredths == 0) {
            return "0";
        }
        String whole = (value < 0 ? "-" : "") + hundredths / 100;
        long rest = hundredths % 100;
        if (rest == 0) {
            return whole;
        }
        return rest % 10 == 0 ? whole + "." + rest / 10 : whole + "." + (rest < 10 ? "0" : "") + rest;
    }

    /** Every digit of it, as a limit may be as small as the number; with an exponent where the digits would fill a page. */
    public static String exact(double value) {
        return Double.isFinite(value) && (value == 0 || Math.abs(value) >= SMALLEST_WRITTEN && Math.abs(value) < LARGEST_WRITTEN)
                ? BigDecimal.valueOf(value).stripTrailingZeros().toPlainString() : Double.toString(value);
    }

    /** A share, chance or time as an answer gives it: to a thousandth, or six digits where that is coarser. */
    public static double thousandths(double value) {
        return Math.abs(value) < 1000 ? Math.round(value * 1000) / 1000.0 : given(value);
    }

    /**
     * Any other figure as an answer gives it: to a thousandth, but never more than six digits, and of what is small three. More
     * would pretend that somebody measured it.
     */
    public static double given(double value) {
        if (value == 0 || !Double.isFinite(value)) {
            return value;
        }
        int magnitude = (int) Math.floor(Math.log10(Math.abs(value)));
        int places = magnitude < -1 ? 2 - magnitude : Math.min(3, 5 - magnitude);
        return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).doubleValue();
    }
}
