package rungwise.knowledge;

/** Numbers as a person writes them: no trailing zeros, at most two decimals. */
public final class Figures {
    private Figures() {
    }

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
}
