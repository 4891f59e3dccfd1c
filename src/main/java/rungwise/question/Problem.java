package rungwise.question;

import rungwise.text.Texts;

/**
 * Something wrong in a question.
 *
 * @param pointer JSON Pointer to the field
 * @param wrong   what is wrong
 * @param remedy  what to do
 */
public record Problem(String pointer, String wrong, String remedy) {
    public Problem {
        // what stands here was sent by somebody and is shown on a terminal
        pointer = PlainText.shown(pointer);
        wrong = PlainText.shown(wrong);
        remedy = PlainText.shown(remedy);
    }

    /**
     * One whose two sentences stand in the message file.
     *
     * @param id    of what is wrong; what to do stands beside it
     * @param named name and value by turns
     */
    public static Problem said(String pointer, String id, Object... named) {
        return new Problem(pointer, Texts.ENGLISH.say("wrong." + id, named), Texts.ENGLISH.say("wrong." + id + ".do", named));
    }

    @Override
    public String toString() {
        return Texts.ENGLISH.say("wrong", "where", pointer.isEmpty() ? Texts.ENGLISH.say("place.everywhere") : pointer, "what", wrong,
                "remedy", remedy);
    }
}
