package rungwise.cli;

/** The user gave something that cannot be used; the message says what, why and what to do. */
final class InputProblem extends RuntimeException {
    private static final long serialVersionUID = 1L;

    InputProblem(String message) {
        super(message);
    }
}
