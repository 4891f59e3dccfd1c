package rungwise.rules;

/** What the customer said to a gate or a method. */
public record Answered(String about, boolean granted) {
}
