package rungwise.rules;

/** A conclusion with its because. */
public record Concluded<C extends Conclusion>(C conclusion, Because because) {
}
