package rungwise.question;

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

    @Override
    public String toString() {
        return (pointer.isEmpty() ? "the question" : pointer) + ": " + wrong + "; " + remedy;
    }
}
