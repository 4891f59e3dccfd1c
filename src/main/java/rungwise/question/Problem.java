package rungwise.question;

import java.util.List;
import java.util.stream.Collectors;
import rungwise.text.Texts;

/**
 * Something wrong in a question.
 *
 * @param pointer JSON Pointer to the field
 * @param wrong   what is wrong
 * @param remedy  what to do
 * @param choices what may have been meant, where telling them apart takes a look at the vehicle
 */
public record Problem(String pointer, String wrong, String remedy, List<Choice> choices) {
    public Problem {
        // what stands here was sent by somebody and is shown on a terminal
        pointer = PlainText.shown(pointer);
        wrong = PlainText.shown(wrong);
        remedy = PlainText.shown(remedy);
        choices = List.copyOf(choices);
    }

    public Problem(String pointer, String wrong, String remedy) {
        this(pointer, wrong, remedy, List.of());
    }

    /** The same, of a question that is part of another thing. */
    public Problem under(String outer) {
        return new Problem(outer + pointer, wrong, remedy, choices);
    }

    /**
     * One whose two sentences stand in the message file.
     *
     * @param id    of what is wrong; what to do stands beside it
     * @param named name and value by turns
     */
    public static Problem said(String pointer, String id, Object... named) {
        return new Problem(pointer, Texts.said("wrong." + id, named), Texts.said("wrong." + id + ".do", named));
    }

    @Override
    public String toString() {
        return Texts.said("wrong", "where", pointer.isEmpty() ? Texts.said("place.everywhere") : pointer, "what", wrong,
                "remedy", remedy) + choices.stream().map(c -> "\n  " + c.id() + ": " + c.tell()).collect(Collectors.joining());
    }
}
