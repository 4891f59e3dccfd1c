package rungwise.knowledge.common;

/** Figures as they are written out. */
public final class Figures {
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

    /** A share or chance as an answer gives it. */
    public static double thousandths(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
