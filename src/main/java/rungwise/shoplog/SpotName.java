package rungwise.shoplog;

import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.regex.Pattern;

/** What a spot is called: short, and of letters that sound apart and digits that look like none of them. */
final class SpotName {
    private static final String LETTERS = "dfhkmqrwxy";
    private static final String DIGITS = "23456789";
    /** A letter and a digit each: half a million names, so that two shops that put their logs together hardly meet. */
    private static final int PAIRS = 3;

    private static final Pattern OURS = Pattern.compile("([" + LETTERS + "][" + DIGITS + "]){" + PAIRS + "}");

    private SpotName() {
    }

    static String drawn(RandomGenerator random) {
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < PAIRS; i++) {
            name.append(LETTERS.charAt(random.nextInt(LETTERS.length())))
                    .append(DIGITS.charAt(random.nextInt(DIGITS.length())));
        }
        return name.toString();
    }

    /** Whether it is such a name as it is kept. */
    static boolean isOurs(String name) {
        return OURS.matcher(name).matches();
    }

    /** One of these names as it is kept, however it was written down; any other name as it is. */
    static String kept(String said) {
        String name = of(said);
        return isOurs(name) ? name : said;
    }

    /** As it may be written down or read out: in capitals, in pairs, with hyphens. */
    static String of(String said) {
        return said.replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT);
    }
}
