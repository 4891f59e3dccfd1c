package rungwise.rules;

/** A fact the question does not give. */
public record Missing(String fact) {
}
