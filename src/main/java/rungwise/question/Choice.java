package rungwise.question;

/**
 * One of the things that a word may have meant.
 *
 * @param tell how to tell it from the others
 */
public record Choice(String id, String name, String tell) {
    public Choice {
        name = PlainText.shown(name);
        tell = PlainText.shown(tell);
    }
}
