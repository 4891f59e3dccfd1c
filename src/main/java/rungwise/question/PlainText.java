package rungwise.question;

import java.util.Arrays;

/** Text from outside as it may be shown: what steers a terminal, or turns the reading round, is written as its code. */
public final class PlainText {
    private PlainText() {
    }

    /** The same text, with each character that is not seen written as {@code \\u} and its code. */
    public static String shown(String text) {
        return shown(text, false);
    }

    /** The same of a text of several lines, whose line ends and tabs stay what they are. */
    public static String lines(String text) {
        return shown(text, true);
    }

    /**
     * What is put into a sentence, shown.
     *
     * @param named name and value by turns
     */
    public static Object[] named(Object... named) {
        return Arrays.stream(named).map(one -> one instanceof String text ? shown(text) : one).toArray();
    }

    private static String shown(String text, boolean inLines) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (steers(c) && !(inLines && (c == '\n' || c == '\t'))) {
                shown.append(Character.isBmpCodePoint(c) ? String.format("\\u%04x", c) : String.format("\\u{%x}", c));
            } else {
                shown.appendCodePoint(c);
            }
        });
        return shown.toString();
    }

    /** Whether a text holds a character that a person does not see, line ends and tabs aside. */
    public static boolean isPlain(String text) {
        return text.codePoints().noneMatch(c -> steers(c) && c != '\n' && c != '\t');
    }

    private static boolean steers(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR, Character.UNASSIGNED, Character.PRIVATE_USE -> true;
            default -> false;
        };
    }
}
