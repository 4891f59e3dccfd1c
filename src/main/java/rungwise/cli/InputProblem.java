package rungwise.cli;

import rungwise.question.BrokenText;
import rungwise.question.PlainText;
import rungwise.text.Texts;
import tools.jackson.core.JacksonException;

/** The user gave something that cannot be used; the message says what, why and what to do. */
final class InputProblem extends RuntimeException {
    private static final long serialVersionUID = 1L;

    InputProblem(String message) {
        super(PlainText.lines(message));
    }

    /**
     * One whose sentence stands in the message file.
     *
     * @param id    of the sentence
     * @param named name and value by turns
     */
    static InputProblem said(String id, Object... named) {
        return new InputProblem(Texts.said("cli." + id, PlainText.named(named)));
    }

    /** What stands in a file is neither YAML nor JSON. */
    static InputProblem unreadable(String what, JacksonException e) {
        BrokenText broken = BrokenText.of(e);
        return said("not-readable", "what", what, "said", broken.said(), "remedy", broken.remedy());
    }
}
