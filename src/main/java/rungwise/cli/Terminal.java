package rungwise.cli;

import java.nio.charset.Charset;
import picocli.CommandLine;

/** What the terminal can show: how wide a line may be, and whether only ASCII. */
final class Terminal {
    private static final int WIDEST = 78;
    private static final int NARROWEST = 30;

    private Terminal() {
    }

    /** As wide as the window, at most 78 columns; COLUMNS says it where there is no window. */
    static int width(CommandLine.Model.CommandSpec spec) {
        String told = System.getenv("COLUMNS");
        int wide = told != null && told.matches("\\d{2,4}") ? Integer.parseInt(told)
                : System.console() == null ? WIDEST : spec.usageMessage().autoWidth(true).width();
        return Math.max(NARROWEST, Math.min(WIDEST, wide));
    }

    /** Where the locale's letters are too few for a degree sign. */
    static boolean isPlain() {
        String encoding = System.getProperty("native.encoding");
        return encoding != null && Charset.isSupported(encoding) && !Charset.forName(encoding).newEncoder().canEncode('µ');
    }
}
